import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { lotDatesOf } from '@/app/_server/stock/judgeable';
import {
  type LotDatesInput,
  lotDateColumns,
  refuseLotDates,
  refuseMadeAfterOpened,
} from '@/app/_server/stock/lot-dates';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok } from '@/shared/result/result';
import type { LabelDate } from '@/shared/shelf-life/types/label-date';

/** A lot's dates as a person has read them on the label; what they were before stays in the history. */
export type CorrectLotDates = { lotId: number; dates: LotDatesInput; why: string };

export const correctLotDates: Command<CorrectLotDates, { lotId: number }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'dates-corrected', request: input }, async (pen) => {
    const lot = await pen.tx.lot.findUnique({ where: { stockId: input.lotId } });
    if (!lot) return err({ code: 'not-found' });
    const refusal =
      refuseLotDates(input.dates, dateIn(pen.book.timeZone, pen.now)) ??
      (await refuseMadeAfterOpened(pen.tx, lot.stockId, input.dates.madeOn));
    if (refusal) return err(refusal);
    const before = lotDatesOf(lot);
    const names = { madeOn: 'made on', bestBefore: 'best before', useBy: 'use by' } as const;
    const said = (Object.keys(names) as (keyof typeof names)[])
      .filter((name) => say(before[name]) !== say(input.dates[name]))
      .map((name) => `${names[name]}: ${say(before[name])} → ${say(input.dates[name])}`);
    if (said.length === 0) return err({ code: 'changes-nothing' });
    await pen.tx.lot.update({
      where: { stockId: lot.stockId },
      data: lotDateColumns(input.dates),
      select: { stockId: true },
    });
    const why = [said.join('; '), input.why.trim()].filter(Boolean).join('. ');
    await pen.enter({ why, productId: lot.productId, stockId: lot.stockId }, { lotId: lot.stockId });
    return ok({ lotId: lot.stockId });
  });

function say(date: LabelDate | undefined): string {
  if (!date) return 'not known';
  return `${date.date}${date.precision === 'day' ? '' : ` (${date.precision})`}${date.confirmed ? '' : ', not confirmed'}`;
}
