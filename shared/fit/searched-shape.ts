import { contactOf, contactOfChain, outerQuarter, type Profile, profileOf } from '@/shared/fit/outer-profile';
import type { HalfSizes } from '@/shared/fit/top-shape';

/** A convex shape as the search sees it: the same to the left and right of its middle, up by one profile, down by another. */
export type SearchedShape = {
  readonly up: Profile;
  readonly down: Profile;
  /** Its furthest point from where it is held, and its greatest height up or down, in micrometres. */
  readonly reach: number;
  readonly tall: number;
  /** Round about where it is held, so that no angle changes it. */
  readonly round: boolean;
};

/** A hair (half a micrometre) is let go, so that a top as large as a sawn rectangle is found in it. */
const HAIR = 0.5;

/** A whole shape held at its centre, widened by the clearance. */
export function wholeShape(sizes: HalfSizes, clearance: number): SearchedShape {
  const quarter = profileOf(outerQuarter(contactOf(sizes, clearance - HAIR)));
  const round =
    sizes.curve === 'power' ? sizes.n === 2 && sizes.a === sizes.b : sizes.r === sizes.a && sizes.a === sizes.b;
  return shapeOf(quarter, quarter, round);
}

/**
 * The part of a shape above the line `from` micrometres above its middle, held where its middle line meets that line,
 * widened by the clearance. From 0 it is the half of a bookmatched top; from nearly the whole height, the back of a
 * piece along a river. `over` turns it over, so that it lies below the line.
 */
export function upperPart(sizes: HalfSizes, from: number, clearance: number, over: boolean): SearchedShape {
  const by = clearance - HAIR;
  const chain = chainAbove(outerQuarter(contactOf(sizes, 0)), from);
  const end = chain.at(-1)?.[0] ?? 0;
  const up = profileOf(outerQuarter(from === 0 ? contactOf(sizes, by) : contactOfChain(chain, by)));
  const down = profileOf(outerQuarter((c, s) => [end + by * c, by * s]));
  return over ? shapeOf(down, up, false) : shapeOf(up, down, false);
}

/** The half length of a shape at a height above its middle. */
function chainAbove(
  quarter: readonly (readonly [number, number])[],
  from: number,
): readonly (readonly [number, number])[] {
  const above: (readonly [number, number])[] = [];
  for (const [x, y] of quarter) {
    const last = above.at(-1);
    if (y >= from) above.push([x, y - from]);
    else {
      const before = last ? last[1] + from : y;
      const part = before === y ? 0 : (before - from) / (before - y);
      above.push([last ? last[0] + (x - last[0]) * part : 0, 0]);
      return above;
    }
  }
  const last = above.at(-1);
  if (last && last[1] > 0) above.push([last[0], 0]);
  return above;
}

function shapeOf(up: Profile, down: Profile, round: boolean): SearchedShape {
  let reach = 0;
  for (const { s, u, half } of [up, down]) {
    s.forEach((x, nr) => {
      reach = Math.max(reach, Math.hypot(x, u[nr] ?? 0));
    });
    reach = Math.max(reach, half);
  }
  return { up, down, reach, tall: Math.max(up.u[0] ?? 0, down.u[0] ?? 0), round };
}
