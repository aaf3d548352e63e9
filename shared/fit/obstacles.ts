import type { DefectPlace } from '@/shared/outline/defect';
import type { Region } from '@/shared/outline/effective-region';
import { type Ring, ringsOf, sidesOf } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { Point } from '@/shared/outline/point';

/** Every side that a shape may not cross, and which closed lines it must lie inside of and outside of. */
export type Obstacles = {
  readonly sides: readonly Side[];
  /** By group: true when the shape must lie inside its closed lines, false when outside. */
  readonly inside: readonly boolean[];
  readonly from: number;
  readonly to: number;
  readonly bounds: ReturnType<typeof boundsOf>;
};

type Side = {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly group: number;
};

/**
 * The obstacles of regions that a shape must lie in all at once (one slab, or both of a bookmatched pair, drawn on one
 * chalk line). A disc becomes a polygon round it at most a quarter of a millimetre outside. A trim becomes a line as much further out as the
 * clearance that the searched shape carries, since a sawn end needs none. Group −1 marks trims.
 */
export function obstaclesOf(regions: readonly Region[]): Obstacles {
  const sides: Side[] = [];
  const inside: boolean[] = [];
  const add = (rings: readonly Ring[], isInside: boolean) => {
    for (const [a, b] of rings.flatMap(sidesOf))
      sides.push({ ax: a.x, ay: a.y, bx: b.x, by: b.y, group: inside.length });
    inside.push(isInside);
  };
  for (const region of regions) add(ringsOf(region.outline), true);
  for (const place of regions.flatMap(({ keepOut }) => keepOut)) add([ringAround(place)], false);
  const from = Math.max(...regions.map((region) => region.from ?? -Infinity));
  const to = Math.min(...regions.map((region) => region.to ?? Infinity));
  const bounds = boundsOf(regions.flatMap(({ outline }) => outline.ring));
  const far = bounds.right - bounds.left + bounds.top - bounds.bottom;
  const clearance = regions[0]?.clearance ?? 0;
  const trim = (x: number) => sides.push({ ax: x, ay: bounds.bottom - far, bx: x, by: bounds.top + far, group: -1 });
  if (from > -Infinity) trim(from - clearance);
  if (to < Infinity) trim(to + clearance);
  return { sides, inside, from, to, bounds };
}

const DISC_CLOSE = 250;

/** A closed line round a place to be kept out of; round a disc, close enough and never inside it. */
export function ringAround(place: DefectPlace): Ring {
  if (place.shape === 'polygon') return place.ring;
  const { centre, radius } = place;
  const count = Math.max(8, Math.ceil(Math.PI / Math.acos(radius / (radius + DISC_CLOSE))));
  const out = radius / Math.cos(Math.PI / count);
  return Array.from({ length: count }, (_, nr): Point => {
    const angle = (2 * Math.PI * nr) / count;
    return { x: centre.x + out * Math.cos(angle), y: centre.y + out * Math.sin(angle) };
  });
}
