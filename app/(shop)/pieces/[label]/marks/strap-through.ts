import type { Outline } from '@/shared/outline/outline';
import type { Strap } from '@/shared/outline/piece-marks';
import type { Point } from '@/shared/outline/point';
import { woodRunsAt } from '@/shared/outline/wood-runs-at';

/** The band through one point straight across, or through two, as far as the wood goes at both its edges. */
export function strapThrough(points: readonly Point[], outline: Outline): Strap | undefined {
  const [one, two = one] = points;
  if (!one || !two) return undefined;
  const edge = (x: number, pick: 'low' | 'high') => {
    const ends = woodRunsAt(outline, x).map(({ from, to }) => (pick === 'low' ? from : to));
    return ends.length ? Math.round(pick === 'low' ? Math.min(...ends) : Math.max(...ends)) : undefined;
  };
  const [upper, lower] = one.y >= two.y ? [one, two] : [two, one];
  const [high, low] = [edge(upper.x, 'high'), edge(lower.x, 'low')];
  if (high === undefined || low === undefined) return undefined;
  return { from: { x: lower.x, y: low }, to: { x: upper.x, y: high } };
}
