import type { Outline } from '@/shared/outline/outline';
import type { NewMark } from '@/shared/outline/piece-marks';
import type { Point } from '@/shared/outline/point';
import { nanometres } from '@/shared/units/nanometres';

/** How a piece lies beside the slab it came from: its own start is so far along, and it may be turned over. */
export type Laid = { readonly shift: number; readonly turned: boolean };

const point = ({ x, y }: Point, { shift, turned }: Laid): Point => ({ x: x - shift + 0, y: (turned ? -y : y) + 0 });

/**
 * An outline as its own piece has it: along the same chalk line, from its own start on; turned over, left is right. Both
 * in micrometres. A piece from 800 to 2000 mm laid anew with a shift of 800 mm runs from 0 to 1200 mm.
 */
export function layOutline({ ring, holes }: Outline, laid: Laid): Outline {
  // Seen from behind a ring runs the other way round.
  const lay = (points: readonly Point[]) => {
    const moved = points.map((each) => point(each, laid));
    return laid.turned ? moved.reverse() : moved;
  };
  return { ring: lay(ring), holes: holes.map(lay) };
}

/** A mark as its own piece has it; turned over, face A is face B. */
export function layMark(mark: NewMark, laid: Laid): NewMark {
  if (mark.is === 'end-check') return mark;
  if (mark.is === 'strap') return { ...mark, from: point(mark.from, laid), to: point(mark.to, laid) };
  const { place, depth } = mark;
  return {
    ...mark,
    place:
      place.shape === 'circle'
        ? { ...place, centre: point(place.centre, laid) }
        : { shape: 'polygon', ring: place.ring.map((each) => point(each, laid)) },
    depth:
      depth.face === 'through' || !laid.turned ? depth : { face: depth.face === 'A' ? 'B' : 'A', depth: depth.depth },
  };
}

/** The part of a mark that is in one half of a resawn piece; undefined where the saw or the other half has all of it. */
export function markInHalf(
  mark: NewMark,
  half: 'upper' | 'lower',
  { thickness, upper, kerf }: { readonly thickness: number; readonly upper: number; readonly kerf: number },
): NewMark | undefined {
  if (mark.is !== 'defect' || mark.depth.face === 'through') return mark;
  const { face, depth } = mark.depth;
  const mine = half === 'upper' ? upper : thickness - upper - kerf;
  const isMyFace = (face === 'A') === (half === 'upper');
  // From the other face it must be through the other half and the kerf to be in this one.
  const reach = isMyFace ? depth : depth - (thickness - mine);
  if (reach <= 0) return undefined;
  return { ...mark, depth: reach >= mine ? { face: 'through' } : { face, depth: nanometres(reach) } };
}
