import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { stillHeld } from '@/app/_server/trace/still-held';
import { err, ok } from '@/shared/result/result';

/** `entryId`: the press that held them. */
export type ReleaseAll = { entryId: number; why: string };

/** `labels`: of what has one; `lots`: how many lots are free again beside them. */
export type ReleasedAll = { entryId: number; labels: string[]; lots: number };

/**
 * Releases all that one press put on hold and that is still on hold by it, the lots with what came in of them since: a
 * recorded decision with its reason. What was
 * released, quarantined or recalled since by a decision of its own stays as that decision left it.
 */
export const releaseAll: Command<ReleaseAll, ReleasedAll> = (book, by, input) =>
  writeEntry<ReleasedAll>(book, { ...by, kind: 'trace-released', request: input }, async (pen) => {
    const why = input.why.trim();
    if (why === '') return err({ code: 'release-needs-reason', field: 'why' });
    const held = await stillHeld(pen.tx, { entryId: input.entryId });
    const [first] = held;
    if (!first) return err({ code: 'nothing-to-release' });
    const by = await pen.tx.entry.findUniqueOrThrow({
      where: { id: input.entryId },
      select: { stockId: true, jobId: true },
    });
    const stockIds = held.map(({ stockId }) => stockId);
    const rows = await pen.tx.stock.findMany({
      where: { id: { in: stockIds } },
      orderBy: { id: 'asc' },
      select: { kind: true, label: true },
    });
    const answer = {
      entryId: pen.entryId,
      labels: rows.flatMap(({ label }) => label ?? []),
      lots: rows.filter(({ kind }) => kind === 'lot').length,
    };
    await pen.enter({ why, reference: first.reference, jobId: by.jobId, stockId: by.stockId ?? undefined }, answer);
    for (const stockId of stockIds) {
      const moved = await pen.move(stockId, { hold: 'free' });
      if (!moved.ok) return moved;
    }
    return ok(answer);
  });
