import type { z } from 'zod';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateAim, DateOrder, DateReading } from '@/shared/calendar/date-readings';
import { LIFE_UNITS, type Life, type LifeUnit, parseLife } from '@/shared/calendar/life';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { sayDateError } from '@/shared/calendar/say-date-error';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import type { CurrencyCode } from '@/shared/units/currency';
import { parseLength } from '@/shared/units/parse-length';
import { parseMoney } from '@/shared/units/parse-money';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { sayLengthError } from '@/shared/units/say-length-error';
import { sayMoneyError } from '@/shared/units/say-money-error';
import { sayQuantityError } from '@/shared/units/say-quantity-error';
import type { StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** How this workshop's typed numbers and dates are read. */
export type Typing = {
  readonly today: CalendarDate;
  readonly order: DateOrder;
  readonly prefer: UnitSystem;
  readonly currency: CurrencyCode;
};

const LIFE_PROBLEM = {
  'life-not-whole': 'Give a whole number, for example 6.',
  'life-too-short': 'It must be at least 1.',
  'life-too-long': 'No tin states more than 50 years. Check the number.',
};

/**
 * Reads the fields of a form as they were typed. What does not read is noted beside its field, and the rest is read on, so
 * that a person sees everything that is wrong at once. An empty field is undefined.
 */
export function readFields(typing: Typing, context: z.core.$RefinementCtx) {
  const say = (field: string, message: string): undefined => {
    context.addIssue({ code: 'custom', path: [field], message });
  };
  return {
    say,
    /** Without an aim it is a label's date: one that can mean two days is refused. */
    date(field: string, text: string, aim?: DateAim): DateReading | undefined {
      if (text.trim() === '') return undefined;
      const read = readTypedDate(text, { ...typing, aim });
      if (!read.ok) return say(field, sayDateError(read.error));
      if (read.value.ambiguous) return say(field, 'This can mean more than one date. Choose which.');
      return { date: read.value.date, precision: read.value.precision };
    },
    /** A date known to the day, of something that was done unless it is said to be ahead. */
    day(field: string, text: string, aim: DateAim = 'past'): CalendarDate | undefined {
      const read = this.date(field, text, aim);
      if (!read) return undefined;
      return read.precision === 'day' ? read.date : say(field, 'Give the day too, for example 12 Dec 2026.');
    },
    count(field: string, text: string, most = MOST_AT_ONCE): number | undefined {
      if (/^\d{1,4}$/.test(text.trim()) && Number(text) >= 1 && Number(text) <= most) return Number(text);
      return say(field, `Give a whole number from 1 to ${most}.`);
    },
    quantity(field: string, text: string, unit: StockUnit): number | undefined {
      if (text.trim() === '') return undefined;
      const read = parseQuantity(text, { unit, prefer: typing.prefer });
      return read.ok ? read.value : say(field, sayQuantityError(read.error));
    },
    money(field: string, text: string): number | undefined {
      if (text.trim() === '') return undefined;
      const read = parseMoney(text, typing.currency);
      return read.ok ? read.value : say(field, sayMoneyError(read.error, typing.currency));
    },
    length(field: string, text: string, mode: 'length' | 'thickness' = 'length'): number | undefined {
      if (text.trim() === '') return undefined;
      const read = parseLength(text, { prefer: typing.prefer, mode });
      if (!read.ok) return say(field, sayLengthError(read.error, typing));
      return read.value > 0 ? read.value : say(field, 'It must be more than nothing.');
    },
    life(field: string, count: string, unit: string): Life | undefined {
      if (count.trim() === '') return undefined;
      if (!(LIFE_UNITS as readonly string[]).includes(unit)) return say(field, 'Choose days, weeks, months or years.');
      const read = parseLife(Number(count.trim().replace(',', '.')), unit as LifeUnit);
      return read.ok ? read.value : say(field, LIFE_PROBLEM[read.error.code]);
    },
  };
}
