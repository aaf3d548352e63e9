import type { Pen } from '@/app/_server/ledger/write-entry';
import type { PlannedPromise } from '@/app/_server/promises/plan-promises';
import { enterBeside, writePromise } from '@/app/_server/promises/write-promise';
import type { Refusal } from '@/app/_server/refusal';

/** Writes planned promises: pieces as movements to the job, containers as lines. In the pen's entry, entered before. */
export async function keepPromises(
  pen: Pen,
  jobId: number,
  planned: readonly PlannedPromise[],
): Promise<Refusal | undefined> {
  await enterBeside(
    pen,
    planned.filter((each) => each.kind === 'container').map((each) => each.stockId),
  );
  for (const { kind, stockId, needId, amount } of planned) {
    if (kind === 'container') await writePromise(pen, { jobId, stockId, needId, delta: amount });
    else {
      const moved = await pen.move(stockId, { jobId });
      if (!moved.ok) return moved.error;
    }
  }
  return undefined;
}
