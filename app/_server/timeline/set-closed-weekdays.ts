import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';

const NAMES = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'] as const;

/** Says on which days of the week nobody works: 0 for Sunday to 6 for Saturday. All seven would leave no day to plan on. */
export const setClosedWeekdays: Command<{ weekdays: number[] }, { weekdays: number[] }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'closed-weekdays-set', request: input }, async (pen) => {
    const weekdays = [...new Set(input.weekdays)].sort((a, b) => a - b);
    const bad = weekdays.some((day) => !Number.isInteger(day) || day < 0 || day > 6);
    if (bad || weekdays.length > 6) return err({ code: 'outside-range', field: 'weekdays' });
    const before = await pen.tx.book.findUniqueOrThrow({ where: { id: 1 }, select: { closedWeekdays: true } });
    const closedWeekdays = weekdays.join(',');
    if (before.closedWeekdays === closedWeekdays) return err({ code: 'changes-nothing' });
    await pen.tx.book.update({ where: { id: 1 }, data: { closedWeekdays }, select: { id: true } });
    const answer = { weekdays };
    await pen.enter({ why: weekdays.map((day) => NAMES[day]).join(', ') || 'none' }, answer);
    return ok(answer);
  });
