import type { Obstacles } from '@/shared/fit/obstacles';

// The loops here index typed arrays within their length; `as number` says so where the compiler cannot see it.

/** The sides of the obstacles turned back by an angle, each from its left end p to its right end q. */
export class TurnedSides {
  readonly count: number;
  readonly px: Float64Array;
  readonly py: Float64Array;
  readonly qx: Float64Array;
  readonly qy: Float64Array;
  private readonly group: Int32Array;
  private readonly parity: Uint8Array;
  private cos = 1;
  private sin = 0;
  /** The upright box round the turned wood. */
  left = 0;
  right = 0;
  bottom = 0;
  top = 0;

  constructor(private readonly obstacles: Obstacles) {
    this.count = obstacles.sides.length;
    const made = () => new Float64Array(this.count);
    [this.px, this.py, this.qx, this.qy] = [made(), made(), made(), made()];
    this.group = Int32Array.from(obstacles.sides, ({ group }) => group);
    this.parity = new Uint8Array(obstacles.inside.length);
  }

  turn(angle: number): void {
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    this.cos = cos;
    this.sin = sin;
    let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
    this.obstacles.sides.forEach((side, nr) => {
      const [ax, ay] = [side.ax * cos + side.ay * sin, side.ay * cos - side.ax * sin];
      const [bx, by] = [side.bx * cos + side.by * sin, side.by * cos - side.bx * sin];
      const swap = bx < ax;
      this.px[nr] = swap ? bx : ax;
      this.py[nr] = swap ? by : ay;
      this.qx[nr] = swap ? ax : bx;
      this.qy[nr] = swap ? ay : by;
      if (side.group < 0) return;
      left = Math.min(left, ax, bx);
      right = Math.max(right, ax, bx);
      bottom = Math.min(bottom, ay, by);
      top = Math.max(top, ay, by);
    });
    this.left = left;
    this.right = right;
    this.bottom = bottom;
    this.top = top;
  }

  /** The place on the slab of a turned place. */
  onSlab(x: number, y: number): { readonly x: number; readonly y: number } {
    return { x: x * this.cos - y * this.sin, y: x * this.sin + y * this.cos };
  }

  /** The turned place of a place on the slab. */
  fromSlab(x: number, y: number): { readonly x: number; readonly y: number } {
    return { x: x * this.cos + y * this.sin, y: y * this.cos - x * this.sin };
  }

  /** Whether a turned place lies in every outline, in no keep-out, and between the trims. */
  isIn(x: number, y: number): boolean {
    const { obstacles, parity, px, py, qx, qy, group } = this;
    const along = x * this.cos - y * this.sin;
    if (along < obstacles.from || along > obstacles.to) return false;
    parity.fill(0);
    for (let nr = 0; nr < this.count; nr += 1) {
      const of = group[nr] as number;
      const [x0, x1] = [px[nr] as number, qx[nr] as number];
      if (of < 0 || x0 > x || x1 <= x) continue;
      const [y0, y1] = [py[nr] as number, qy[nr] as number];
      if (y0 + ((x - x0) / (x1 - x0)) * (y1 - y0) > y) parity[of] = (parity[of] as number) ^ 1;
    }
    for (let of = 0; of < parity.length; of += 1) if ((parity[of] === 1) !== obstacles.inside[of]) return false;
    return true;
  }

  /**
   * Whether no place of a box is in: no side passes through it, and one place of it is not in. A side that does pass
   * leaves it undecided, which counts as no.
   */
  isOutside(x0: number, x1: number, bottom: number, top: number): boolean {
    for (let nr = 0; nr < this.count; nr += 1) {
      const [ax, bx] = [this.px[nr] as number, this.qx[nr] as number];
      const [s, e] = [Math.max(ax, x0), Math.min(bx, x1)];
      if (s > e) continue;
      const [ay, by] = [this.py[nr] as number, this.qy[nr] as number];
      const across = bx - ax;
      const rise = across < 1e-9 ? 0 : (by - ay) / across;
      const [ys, ye] = across < 1e-9 ? [ay, by] : [ay + rise * (s - ax), ay + rise * (e - ax)];
      if (Math.max(ys, ye) >= bottom && Math.min(ys, ye) <= top) return false;
    }
    const y = bottom === -Infinity ? Math.min(top, 1e12) - 1e6 : top === Infinity ? bottom + 1e6 : (bottom + top) / 2;
    return !this.isIn((x0 + x1) / 2, y);
  }
}
