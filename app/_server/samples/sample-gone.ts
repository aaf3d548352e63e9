import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';

/** A sample was thrown away or lost: why is written, and it is not asked for again. */
export const sampleGone: Command<{ sampleId: number; why: string }, { name: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'sample-gone', request: input }, async (pen) => {
    const why = input.why.trim();
    if (why === '') return err({ code: 'reason-needed', field: 'why' });
    const sample = await pen.tx.sample.findUnique({
      where: { id: input.sampleId },
      select: {
        name: true,
        lotAId: true,
        lotBId: true,
        entry: { select: { reversedBy: { select: { id: true } } } },
        goneBy: { select: { reversedBy: { select: { id: true } } } },
      },
    });
    if (!sample || sample.entry.reversedBy) return err({ code: 'not-found' });
    if (sample.goneBy && !sample.goneBy.reversedBy) return err({ code: 'sample-gone' });
    const answer = { name: sample.name };
    await pen.enter({ why: `${sample.name}: ${why}`, stockId: sample.lotAId ?? sample.lotBId ?? undefined }, answer);
    await pen.tx.sample.update({
      where: { id: input.sampleId },
      data: { goneById: pen.entryId },
      select: { id: true },
    });
    return ok(answer);
  });
