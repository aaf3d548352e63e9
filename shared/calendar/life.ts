import { err, ok, type Result } from '@/shared/result/result';

export const LIFE_UNITS = ['day', 'week', 'month', 'year'] as const;
export type LifeUnit = (typeof LIFE_UNITS)[number];

/** How long something keeps, in whole units of the calendar: `{ count: 18, unit: 'month' }`. */
export type Life = { readonly count: number; readonly unit: LifeUnit };

export type LifeError =
  | { readonly code: 'life-not-whole'; readonly count: number }
  | { readonly code: 'life-too-short'; readonly count: number }
  | { readonly code: 'life-too-long'; readonly count: number; readonly mostYears: 50 };

const PER_YEAR: Record<LifeUnit, number> = { day: 365, week: 52, month: 12, year: 1 };

/**
 * A life somebody entered, checked: a whole count of at least 1, and no more than 50 years, which no tin states and a
 * slipped digit does. `parseLife(18, 'month')` is that life; `parseLife(0, 'day')` fails with `life-too-short`.
 */
export function parseLife(count: number, unit: LifeUnit): Result<Life, LifeError> {
  if (!Number.isInteger(count)) return err({ code: 'life-not-whole', count });
  if (count < 1) return err({ code: 'life-too-short', count });
  if (count > 50 * PER_YEAR[unit]) return err({ code: 'life-too-long', count, mostYears: 50 });
  return ok({ count, unit });
}
