import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { joinConditions, splitConditions } from '@/app/_server/stock/conditions';
import { treatmentsByDay } from '@/app/_server/treatments/treatments-by-day';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok } from '@/shared/result/result';
import type { TreatmentKind } from '@/shared/shelf-life/conditions-after';
import { conditionsByDay } from '@/shared/shelf-life/conditions-by-day';
import type { Condition } from '@/shared/shelf-life/types/container-facts';

/** What was done to the content of a container, or what it went through. */
export type RecordTreatment = {
  label: string;
  kind: TreatmentKind;
  doneOn: CalendarDate;
  tenthsC?: number;
  minutes?: number;
  note: string;
};

export type Treated = { label: string; added: Condition[]; cleared: Condition[] };

/** Warmer than any water bath a resin is put in. */
const HOTTEST_TENTHS = 1500;
const COLDEST_TENTHS = -500;
const LONGEST_MINUTES = 7 * 24 * 60;

/**
 * Writes a treatment, with the conditions that it brings or takes away. Crystals are gone when it was warmed and stirred
 * since they were seen, by the days on which that was, whatever order it is written in; straining takes nothing away and
 * makes nothing good again.
 */
export const recordTreatment: Command<RecordTreatment, Treated> = (book, by, input) =>
  writeEntry<Treated>(book, { ...by, kind: 'treated', request: input }, async (pen) => {
    const { label, kind, doneOn, tenthsC, minutes } = input;
    const container = await pen.tx.container.findFirst({
      where: { stock: { label } },
      select: { stockId: true, receivedOn: true, stock: { select: { condition: true, quantity: true } } },
    });
    if (!container) return err({ code: 'not-found', facts: { label } });
    if (container.stock.quantity === 0n) return err({ code: 'already-empty', facts: { label } });
    if (doneOn > dateIn(pen.book.timeZone, pen.now)) return err({ code: 'received-in-the-future', field: 'doneOn' });
    if (doneOn < container.receivedOn)
      return err({ code: 'happened-before-it-arrived', field: 'doneOn', facts: { label } });
    if (tenthsC !== undefined && (tenthsC < COLDEST_TENTHS || tenthsC > HOTTEST_TENTHS))
      return err({ code: 'outside-range', field: 'temperature' });
    if (minutes !== undefined && (minutes < 1 || minutes > LONGEST_MINUTES))
      return err({ code: 'outside-range', field: 'minutes' });
    const before = splitConditions(container.stock.condition);
    const now = { kind, on: doneOn, entry: pen.entryId };
    const after = conditionsByDay(before, now, await treatmentsByDay(pen, container));
    const added = after.filter((each) => !before.includes(each));
    const cleared = before.filter((each) => !after.includes(each));
    const answer: Treated = { label, added, cleared };
    await pen.enter({ stockId: container.stockId, why: sayTreatment(input) }, answer);
    await pen.tx.treatment.create({
      data: {
        entryId: pen.entryId,
        stockId: container.stockId,
        kind,
        doneOn,
        tenthsC: tenthsC ?? null,
        minutes: minutes ?? null,
        note: input.note.trim(),
      },
      select: { id: true },
    });
    if (added.length + cleared.length > 0) {
      const moved = await pen.move(container.stockId, { condition: joinConditions(after) });
      if (!moved.ok) return moved;
    }
    return ok(answer);
  });

const WORDS: Readonly<Record<TreatmentKind, string>> = {
  warmed: 'Warmed',
  stirred: 'Stirred',
  strained: 'Strained',
  froze: 'Froze',
  overheated: 'Stood too warm',
  'crystals-seen': 'Crystals seen',
};

function sayTreatment({ kind, doneOn, tenthsC, minutes, note }: RecordTreatment): string {
  const how = [tenthsC === undefined ? '' : `${tenthsC / 10} °C`, minutes === undefined ? '' : `${minutes} min`];
  const measured = how.filter(Boolean).join(', ');
  return [`${WORDS[kind]} on ${doneOn}${measured ? `, ${measured}` : ''}`, note.trim()].filter(Boolean).join('. ');
}
