import type { StationRefusal } from '@/shared/outline/outline-from-stations';

/**
 * What is wrong with an outline, and what to do about it, as one plain sentence each. Every code of `outlineFromStations`
 * and `outlineFromPoints` has its words. `sayOutlineFault('edges-cross')` begins "Left and right do not meet…".
 */
export function sayOutlineFault(code: StationRefusal['code']): { readonly says: string; readonly toDo: string } {
  const [says, toDo] = WORDS[code];
  return { says, toDo };
}

const WORDS: Record<StationRefusal['code'], readonly [string, string]> = {
  'too-few-stations': ['One station is no shape.', 'Measure both ends, and the middle.'],
  'station-out-of-order': ['This station lies before the one above it.', 'Go down the line in order, from the start.'],
  'station-repeated': ['There is a station at this place already.', 'Give another place, or take one of them out.'],
  'edges-cross': [
    'Here the left edge lies right of the right edge.',
    'Check both distances; below zero is across the line.',
  ],
  'no-wood-here': ['Here the wood has no width.', 'Check both distances; only an end may come to a point.'],
  'gap-outside': ['This gap is not on the wood.', 'Check it against the stations beside it.'],
  'too-few-points': ['An outline needs three points.', 'Go on round the edge.'],
  'out-of-range': ['This is further than 20 m.', 'Check the unit.'],
  'repeated-point': ['Two points lie on one another here.', 'Take one of them out.'],
  'sides-cross': ['The outline crosses itself here.', 'Move this point, or the one before it.'],
  'no-area': ['These points lie on one line.', 'Go round the edge.'],
  'gap-in-gap': ['One gap lies in another.', 'Take the inner one out.'],
};
