import type { Outline } from '@/shared/outline/outline';
import { woodRunsAt } from '@/shared/outline/wood-runs-at';

/**
 * The usable width at `x` micrometres along the line: the widest unbroken run of wood across, in micrometres; 0 outside.
 * A crotch 600 wide with a gap of 100 in the middle has 250.
 */
export function widthAt(outline: Outline, x: number): number {
  return woodRunsAt(outline, x).reduce((widest, { from, to }) => Math.max(widest, to - from), 0);
}
