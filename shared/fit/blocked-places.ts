import type { CoveredShape } from '@/shared/fit/covered-shape';
import type { TurnedSides } from '@/shared/fit/turned-sides';

/** For each side, the places across that it blocks at one place along: none where `low` is infinite. */
export type Blocked = { readonly low: Float64Array; readonly high: Float64Array };

// The loops here index typed arrays within their length; `as number` says so where the compiler cannot see it.

/**
 * What each side blocks. A shape held at (x, y) meets a side when y lies between two bounds: the side's Minkowski sum
 * with the mirrored shape, at x. That sum is convex, so what a side blocks at both ends of a stretch of x it blocks all
 * along the stretch.
 */
export class BlockedPlaces {
  private readonly pullUp: Float64Array;
  private readonly pullDown: Float64Array;
  private readonly order: Int32Array;

  constructor(
    private readonly sides: TurnedSides,
    private readonly shape: CoveredShape,
  ) {
    this.pullUp = new Float64Array(sides.count);
    this.pullDown = new Float64Array(sides.count);
    this.order = Int32Array.from({ length: sides.count }, (_, nr) => nr);
  }

  made(): Blocked {
    return { low: new Float64Array(this.sides.count), high: new Float64Array(this.sides.count) };
  }

  /** To be called when the sides have been turned or the shape spread. */
  turned(): void {
    const { px, py, qx, qy, count } = this.sides;
    for (let nr = 0; nr < count; nr += 1) {
      const across = (qx[nr] as number) - (px[nr] as number);
      const slope = across === 0 ? 0 : ((qy[nr] as number) - (py[nr] as number)) / across;
      this.pullUp[nr] = this.shape.pulledAbove(-slope);
      this.pullDown[nr] = this.shape.pulledBelow(slope);
    }
  }

  /** What is blocked at one place along. */
  at(x: number, { low, high }: Blocked): void {
    const { shape, pullUp, pullDown } = this;
    const { px, py, qx, qy, count } = this.sides;
    const { half } = shape;
    for (let nr = 0; nr < count; nr += 1) {
      const [x0, x1] = [px[nr] as number, qx[nr] as number];
      const t0 = Math.max(x0 - x, -half);
      const t1 = Math.min(x1 - x, half);
      if (t0 > t1) {
        low[nr] = Infinity;
        high[nr] = -Infinity;
        continue;
      }
      const [y0, y1] = [py[nr] as number, qy[nr] as number];
      const across = x1 - x0;
      if (across < 1e-9) {
        const nearest = t0 > 0 ? t0 : t1 < 0 ? -t1 : 0;
        low[nr] = Math.min(y0, y1) - shape.above(nearest);
        high[nr] = Math.max(y0, y1) + shape.below(nearest);
        continue;
      }
      const tu = Math.max(t0, Math.min(t1, pullUp[nr] as number));
      const td = Math.max(t0, Math.min(t1, pullDown[nr] as number));
      const rise = (y1 - y0) / across;
      low[nr] = y0 + rise * (x + tu - x0) - shape.above(tu < 0 ? -tu : tu);
      high[nr] = y0 + rise * (x + td - x0) + shape.below(td < 0 ? -td : td);
    }
  }

  /** What is blocked at both ends of a stretch, and so all along it. */
  along(at0: Blocked, at1: Blocked, { low, high }: Blocked): void {
    for (let nr = 0; nr < low.length; nr += 1) {
      const from = Math.max(at0.low[nr] as number, at1.low[nr] as number);
      const to = Math.min(at0.high[nr] as number, at1.high[nr] as number);
      low[nr] = from <= to ? from : Infinity;
      high[nr] = to;
    }
  }

  /** The sides by what they block first. Nearly sorted from one place to the next, so insertion is quicker than a sort. */
  inOrder({ low }: Blocked): Int32Array {
    const { order } = this;
    for (let nr = 1; nr < order.length; nr += 1) {
      const moved = order[nr] as number;
      const key = low[moved] as number;
      let at = nr - 1;
      while (at >= 0 && (low[order[at] as number] as number) > key) {
        order[at + 1] = order[at] as number;
        at -= 1;
      }
      order[at + 1] = moved;
    }
    return order;
  }
}
