import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { STANDS } from '@/app/_server/timeline/standing';
import { err, ok } from '@/shared/result/result';

/** Takes a stretch of closed days off: the workshop is open then. */
export const removeClosedDays: Command<{ id: number }, { id: number }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'closed-days-removed', request: input }, async (pen) => {
    const row = await pen.tx.closedDay.findFirst({ where: { id: input.id, ...STANDS } });
    if (!row) return err({ code: 'not-found' });
    const answer = { id: row.id };
    await pen.enter({ why: `${row.name ? `${row.name}, ` : ''}${row.fromDay} to ${row.toDay}` }, answer);
    await pen.tx.closedDay.update({
      where: { id: row.id },
      data: { removedById: pen.entryId },
      select: { id: true },
    });
    return ok(answer);
  });
