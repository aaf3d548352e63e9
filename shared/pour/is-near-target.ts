import { USUAL_TOLERANCE_TENTHS } from '@/shared/pour/weighed-ratio';
import type { Milligrams } from '@/shared/units/stock-unit';

/**
 * Whether what was weighed is what was planned: off by no more than the sheet's tolerance, tenths of a per cent, or by one
 * step of the scale where that is more. Where the sheet names no tolerance, 2 %: common practice. 1082 g of 1104 g on a
 * scale of 1 g are near, 1081 g are not.
 */
export function isNearTarget(
  weighed: Milligrams,
  target: Milligrams,
  { toleranceTenths = USUAL_TOLERANCE_TENTHS, step }: { toleranceTenths?: number | undefined; step: Milligrams },
): boolean {
  return Math.abs(weighed - target) <= Math.max((target * toleranceTenths) / 1000, step);
}
