import { type Ring, sidesOf } from '@/shared/outline/outline';
import { segmentsMeet } from '@/shared/outline/segments-meet';
import { turn } from '@/shared/outline/turn';

/** Two sides that meet where they must not: side `nr` runs from point `nr` of its ring to the next. */
export type Crossing = {
  readonly ring: number;
  readonly side: number;
  readonly otherRing: number;
  readonly otherSide: number;
};

/**
 * The first two sides of these rings that cross or touch, other than neighbours at their shared point; undefined when
 * every ring is simple and keeps clear of the others. A side that folds back over its neighbour counts. Exact.
 */
export function findCrossing(rings: readonly Ring[]): Crossing | undefined {
  const sides = rings.flatMap((points, ring) =>
    sidesOf(points).map(([a, b], side) => ({ a, b, ring, side, last: points.length - 1, least: Math.min(a.x, b.x) })),
  );
  const byStart = [...sides].sort((one, two) => one.least - two.least);
  let found: Crossing | undefined;
  byStart.forEach((one, nr) => {
    const most = Math.max(one.a.x, one.b.x);
    for (let at = nr + 1; at < byStart.length; at += 1) {
      const two = byStart[at];
      if (!two || two.least > most) return;
      const [early, late] =
        one.ring < two.ring || (one.ring === two.ring && one.side < two.side) ? [one, two] : [two, one];
      const follows = early.ring === late.ring && late.side === early.side + 1;
      const closes = early.ring === late.ring && early.side === 0 && late.side === late.last;
      const wrong = follows
        ? foldsBack(early.a, early.b, late.b)
        : closes
          ? foldsBack(late.a, late.b, early.b)
          : segmentsMeet(one.a, one.b, two.a, two.b);
      if (!wrong) continue;
      const crossing = { ring: early.ring, side: early.side, otherRing: late.ring, otherSide: late.side };
      if (!found || comesBefore(crossing, found)) found = crossing;
    }
  });
  return found;
}

function foldsBack(before: Ring[number], at: Ring[number], after: Ring[number]): boolean {
  const ahead = (at.x - before.x) * (after.x - at.x) + (at.y - before.y) * (after.y - at.y);
  return turn(before, at, after) === 0 && ahead < 0;
}

function comesBefore(a: Crossing, b: Crossing): boolean {
  return a.ring - b.ring || a.side - b.side || a.otherRing - b.otherRing || a.otherSide - b.otherSide
    ? (a.ring - b.ring || a.side - b.side || a.otherRing - b.otherRing || a.otherSide - b.otherSide) < 0
    : false;
}
