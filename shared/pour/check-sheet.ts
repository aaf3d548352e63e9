import { type MassRatio, massRatio, type RatioError } from '@/shared/pour/check-ratio';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import { err, type Result } from '@/shared/result/result';
import { gramsPerLitre } from '@/shared/units/density';

type SheetField = keyof ResinSheet | 'depthLeast' | 'depthMost' | 'depthMass' | 'potMinutes' | 'potMass';

export type SheetError =
  | RatioError
  /** A number no sheet has: a slip of the unit. `row` counts the rows of the depths, or of the pot lives, from 0. */
  | { readonly code: 'outside-range'; readonly field: SheetField; readonly row?: number }
  /** A larger mass that would stay workable longer than a smaller one, in a room no cooler. */
  | { readonly code: 'longer-with-more'; readonly field: SheetField; readonly row: number }
  /** The first of two is beyond the second: a window that ends before it begins. */
  | { readonly code: 'wrong-way-round'; readonly field: SheetField; readonly row?: number };

const MOST_HOURS = 24 * 60;
const inRange = (value: number | undefined, least: number, most: number) =>
  value === undefined || (Number.isFinite(value) && value >= least && value <= most);

/**
 * Whether what was read off a sheet can be: ratios that hold together (`massRatio`), densities a liquid has, depths and
 * windows the right way round, no more minutes for more resin, hours up to 60 days, shrinkage up to 20 %, tolerance up to 50 % of part B. Answers the ratio
 * to weigh by. A sheet whose pour-again window runs from 24 to 12 hours is `wrong-way-round` at `againToHours`.
 */
export function checkSheet(sheet: ResinSheet): Result<MassRatio, SheetError> {
  const wrong = (field: SheetField, row?: number): Result<never, SheetError> =>
    err(row === undefined ? { code: 'outside-range', field } : { code: 'outside-range', field, row });
  const turned = (field: SheetField, row?: number): Result<never, SheetError> =>
    err(row === undefined ? { code: 'wrong-way-round', field } : { code: 'wrong-way-round', field, row });

  for (const field of ['densityA', 'densityB', 'mixedDensity'] as const) {
    const density = sheet[field];
    if (density !== undefined && !gramsPerLitre(density).ok) return wrong(field);
  }
  for (const [row, { least, most, mostMass }] of sheet.depths.entries()) {
    if (!(most > 0)) return wrong('depthMost', row);
    if (!(least >= 0)) return wrong('depthLeast', row);
    if (least > most) return turned('depthMost', row);
    if (mostMass !== undefined && !(mostMass > 0)) return wrong('depthMass', row);
  }
  const potLives = sheet.potLives ?? [];
  for (const [row, { minutes, mass, at }] of potLives.entries()) {
    if (!inRange(minutes, 1, MOST_HOURS * 60)) return wrong('potMinutes', row);
    if (!(mass > 0)) return wrong('potMass', row);
    const isLonger = potLives.some((other) => other.mass < mass && other.at <= at && other.minutes < minutes);
    if (isLonger) return err({ code: 'longer-with-more', field: 'potMinutes', row });
  }
  for (const field of ['againFromHours', 'againToHours', 'demouldHours'] as const) {
    if (!inRange(sheet[field], 0, MOST_HOURS)) return wrong(field);
  }
  if (!inRange(sheet.fullCureDays, 0, 365)) return wrong('fullCureDays');
  if (!inRange(sheet.toleranceTenths, 1, 500)) return wrong('toleranceTenths');
  if (!inRange(sheet.shrinkageHundredths, 0, 2000)) return wrong('shrinkageHundredths');
  if ((sheet.againFromHours ?? 0) > (sheet.againToHours ?? MOST_HOURS)) return turned('againToHours');
  if ((sheet.leastRoom ?? -Infinity) > (sheet.mostRoom ?? Infinity)) return turned('mostRoom');
  return massRatio(sheet);
}
