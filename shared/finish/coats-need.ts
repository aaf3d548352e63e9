import { COVERAGE_TENTHS, MOST_COATS } from '@/shared/finish/finish-sheet';
import { err, ok, type Result } from '@/shared/result/result';
import { type Microlitres, microlitres } from '@/shared/units/stock-unit';

export type CoatsAsk = {
  /** What is coated, square millimetres. */
  readonly areaMm2: number;
  readonly coats: number;
  /** How far a litre goes in one coat, tenths of a square metre. */
  readonly coverageTenths: number;
  /** What stays in the tin, the cloth, the roller or the air, whole per cent of what is taken. */
  readonly lossPercent: number;
};

/** What each coat takes, and all of them. */
export type CoatsNeed = { readonly each: Microlitres; readonly total: Microlitres };

export type CoatsNeedError = { readonly code: 'outside-range'; readonly field: keyof CoatsAsk };

/** A square of 30 m: no workshop coats more at once. */
const MOST_AREA_MM2 = 9e8;
const MOST_LOSS_PERCENT = 90;

/**
 * How much finish some coats take: area ÷ (coverage × (1 − loss)), each coat rounded up to the microlitre, so that the
 * total is never short. Practical coverage is the theoretical less the share that is lost: the formula of coatings
 * makers' manuals. Area above 0 and up to 900 m², 1 to 30 coats, coverage 0.5 to 100 m² a litre, loss 0 to 90 %; the ends
 * are allowed but for an area of 0. 2 m² at 10 m² a litre with 20 % lost take 0.25 L a coat, 0.75 L for three.
 */
export function coatsNeed({
  areaMm2,
  coats,
  coverageTenths,
  lossPercent,
}: CoatsAsk): Result<CoatsNeed, CoatsNeedError> {
  if (!(areaMm2 > 0 && areaMm2 <= MOST_AREA_MM2)) return err({ code: 'outside-range', field: 'areaMm2' });
  if (!(Number.isInteger(coats) && coats >= 1 && coats <= MOST_COATS))
    return err({ code: 'outside-range', field: 'coats' });
  if (!(coverageTenths >= COVERAGE_TENTHS.least && coverageTenths <= COVERAGE_TENTHS.most)) {
    return err({ code: 'outside-range', field: 'coverageTenths' });
  }
  if (!(Number.isInteger(lossPercent) && lossPercent >= 0 && lossPercent <= MOST_LOSS_PERCENT)) {
    return err({ code: 'outside-range', field: 'lossPercent' });
  }
  // One square millimetre at one square metre a litre takes one microlitre. Nearly whole is whole: a double's last digit costs nothing.
  const exact = (areaMm2 * 1000) / (coverageTenths * (100 - lossPercent));
  const each = Math.max(1, Math.ceil(exact - exact * 1e-12));
  return ok({ each: microlitres(each), total: microlitres(each * coats) });
}
