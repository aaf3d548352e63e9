import { err, ok, type Result } from '@/shared/result/result';

/**
 * What a finish's data sheet says of one coat of it. Whatever it does not say is left out, never guessed. `from` says
 * whether the numbers stand on a sheet or were typed without one.
 */
export type FinishSheet = {
  readonly from: 'sheet' | 'typed';
  /** How far a litre goes in one coat, tenths of a square metre. */
  readonly coverageTenths?: number | undefined;
  readonly coats?: number | undefined;
  /** The next coat goes on from so many hours, and to so many hours without sanding. */
  readonly recoatFromHours?: number | undefined;
  readonly recoatToHours?: number | undefined;
  /** Until it bears use, and may leave the shop. */
  readonly cureDays?: number | undefined;
  /** Sanded between coats whatever the window. */
  readonly sandBetween?: boolean | undefined;
};

export type FinishSheetError = {
  readonly code: 'outside-range' | 'window-ends-before-it-begins';
  readonly field: 'coverageTenths' | 'coats' | 'recoatFromHours' | 'recoatToHours' | 'cureDays';
};

/** A litre covers 0.5 m² as a flood coat and hardly more than 100 m² as a burnished oil: beyond, it is a slip of the unit. */
export const COVERAGE_TENTHS = { least: 5, most: 1000 } as const;
export const MOST_COATS = 30;
const MOST_HOURS = 24 * 60;
const MOST_CURE_DAYS = 180;

/**
 * A finish sheet somebody entered, checked: coverage from 0.5 to 100 m² a litre, 1 to 30 coats, hours up to 60 days with
 * a window that does not end before it begins, cure up to 180 days; whole numbers, each allowed to be missing. The ends of
 * each range are allowed.
 */
export function checkFinishSheet(sheet: FinishSheet): Result<FinishSheet, FinishSheetError> {
  const ranges = [
    ['coverageTenths', COVERAGE_TENTHS.least, COVERAGE_TENTHS.most],
    ['coats', 1, MOST_COATS],
    ['recoatFromHours', 0, MOST_HOURS],
    ['recoatToHours', 0, MOST_HOURS],
    ['cureDays', 0, MOST_CURE_DAYS],
  ] as const;
  for (const [field, least, most] of ranges) {
    const value = sheet[field];
    if (value !== undefined && !(Number.isInteger(value) && value >= least && value <= most)) {
      return err({ code: 'outside-range', field });
    }
  }
  const { recoatFromHours: from, recoatToHours: to } = sheet;
  if (to !== undefined && from !== undefined && to < from) {
    return err({ code: 'window-ends-before-it-begins', field: 'recoatToHours' });
  }
  return ok(sheet);
}
