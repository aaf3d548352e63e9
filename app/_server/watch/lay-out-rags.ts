import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { ragsOut } from '@/app/_server/watch/rags-out';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok } from '@/shared/result/result';

/** Says that the rags of every oil finish taken until now are laid out, or safe in their can. Reversed, they wait again. */
export const layOutRags: Command<object, { entryId: number }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'rags-laid-out', request: input }, async (pen) => {
    const { timeZone } = pen.book;
    const out = await ragsOut(pen.tx, { today: dateIn(timeZone, pen.now), timeZone });
    if (out.length === 0) return err({ code: 'no-rags-out' });
    const answer = { entryId: pen.entryId };
    await pen.enter({ why: [...new Set(out.map(({ product }) => product))].join(', ') }, answer);
    return ok(answer);
  });
