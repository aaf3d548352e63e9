import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import { err, ok } from '@/shared/result/result';

export type AddClosedDays = { from: CalendarDate; to: CalendarDate; name: string };

const LONGEST_DAYS = 366;

/** Says a stretch of days on which nobody works, both ends included. */
export const addClosedDays: Command<AddClosedDays, { entryId: number }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'closed-days-added', request: input }, async (pen) => {
    const { from, to } = input;
    const name = input.name.trim();
    if (to < from) return err({ code: 'ends-before-it-begins', field: 'to' });
    if (daysBetween(from, to) > LONGEST_DAYS) return err({ code: 'outside-range', field: 'to' });
    const answer = { entryId: pen.entryId };
    await pen.enter({ why: `${name ? `${name}, ` : ''}${from}${to === from ? '' : ` to ${to}`}` }, answer);
    await pen.tx.closedDay.create({
      data: { entryId: pen.entryId, fromDay: from, toDay: to, name },
      select: { id: true },
    });
    return ok(answer);
  });
