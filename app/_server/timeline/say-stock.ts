import type { StockVerdict } from '@/app/_server/timeline/judge-stock';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { sayVerdict } from '@/shared/shelf-life/say-verdict';
import type { VerdictWord } from '@/shared/shelf-life/types/verdict';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A verdict of the time line in words, ready to be drawn. */
export type SaidStock = {
  key: string;
  stepId: number | null;
  word: VerdictWord;
  /** What it is about: `Hardwax oil, satin`. */
  name: string;
  label: string | null;
  href: string | null;
  /** `0.3 L of it, promised`. */
  how: string;
  says: string;
};

export type SayStock = { today: CalendarDate; order: DateOrder; prefer: UnitSystem };

/** Says what a container, a piece or a shortage means on its day. */
export function sayStock(one: StockVerdict, { today, order, prefer }: SayStock): SaidStock {
  const day = (date: CalendarDate) => sayDate(date, { order, today });
  const { key, stepId, word, name, label } = one;
  const common = { key, stepId, word, name, label };
  switch (one.of) {
    case 'container': {
      const amount = printQuantity(amountOf(one.unit, one.amount), one.unit, { prefer });
      const sayAmount = (some: number) => printQuantity(amountOf(one.unit, some), one.unit, { prefer });
      return {
        ...common,
        href: `/containers/${label}`,
        how: one.promised
          ? `${amount} promised`
          : word === 'stop'
            ? `${amount} free`
            : `${amount} free, the best for the day`,
        says: sayVerdict(one.verdict, { today, order, prefer, sayAmount }),
      };
    }
    case 'short':
      return {
        ...common,
        href: null,
        how: `${printQuantity(amountOf(one.unit, one.amount), one.unit, { prefer })} short`,
        says: `Nothing more that is good on ${day(one.day)} is free.`,
      };
    case 'piece':
      return { ...common, href: `/pieces/${label}`, how: 'promised', says: sayPiece(one, day) };
  }
}

function sayPiece(
  { why, dryOn, day }: Extract<StockVerdict, { of: 'piece' }>,
  say: (date: CalendarDate) => string,
): string {
  switch (why) {
    case 'held':
      return 'It is on hold, gone or promised to another job.';
    case 'no-reading-asked':
      return 'A sheet is made dry.';
    case 'dry-unknown':
      return 'When it is dry is not known: read it, and log the air of its room.';
    case 'dry':
      return `Dry enough by ${say(day)}.`;
    case 'dry-unsure':
      return `Likely dry by ${dryOn ? say(dryOn) : say(day)}, but it may take longer than ${say(day)}.`;
    case 'dry-late':
      return dryOn
        ? `Dry enough on ${say(dryOn)} at the likeliest. Needed on ${say(day)}.`
        : 'It will not get dry where it stands.';
  }
}
