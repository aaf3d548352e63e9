import { type Outline, ringsOf, sidesOf } from '@/shared/outline/outline';

/**
 * A function that gives the area of the wood before `x` along the line, in square micrometres: ∮ −y dx over what lies
 * before it. For a rectangle of 2000 × 500 mm from 0, it gives half the area at 1000 mm.
 */
export function areaBefore(outline: Outline): (x: number) => number {
  const sides = Float64Array.from(
    ringsOf(outline).flatMap((ring) => sidesOf(ring).flatMap(([a, b]) => (a.x === b.x ? [] : [a.x, a.y, b.x, b.y]))),
  );
  return (x) => {
    let area = 0;
    for (let nr = 0; nr < sides.length; nr += 4) {
      const [ax, ay, bx, by] = [sides[nr], sides[nr + 1], sides[nr + 2], sides[nr + 3]] as [
        number,
        number,
        number,
        number,
      ];
      if (ax >= x && bx >= x) continue;
      const rise = (by - ay) / (bx - ax);
      const from = Math.min(ax, x);
      const to = Math.min(bx, x);
      area -= (ay + rise * ((from + to) / 2 - ax)) * (to - from);
    }
    return area;
  };
}
