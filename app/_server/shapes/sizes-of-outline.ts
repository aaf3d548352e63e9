import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { ChalkLine } from '@/shared/outline/station';
import { widthAt } from '@/shared/outline/width-at';

/** The columns of a piece that say how long and wide it is, nanometres. */
export type SizeColumns = { lengthNm: bigint; widthStartNm: bigint; widthMiddleNm: bigint; widthEndNm: bigint };

/**
 * Length along the chalk line and usable width at its start, half way and at its end. What was typed at a station is
 * taken as it was typed: the outline is only true to the micrometre. Where an outline without stations comes to a point at
 * an end, as one tapped on a photo always does a little, the width is that of a fiftieth of the length further in.
 */
export function sizesOfOutline(outline: Outline, chalkLine?: ChalkLine): SizeColumns {
  const { left, right } = boundsOf(outline.ring);
  const [first, last] = [chalkLine?.stations[0], chalkLine?.stations.at(-1)];
  const middle = chalkLine?.stations.find(({ at }) => first && last && 2 * at === first.at + last.at);
  const isWhole = (chalkLine?.gaps ?? []).length === 0;
  const width = (x: number, station?: ChalkLine['stations'][number]) =>
    station && isWhole ? BigInt(station.left) + BigInt(station.right) : BigInt(Math.round(widthAt(outline, x) * 1000));
  const end = (x: number, inward: 1 | -1) => {
    const within = x + (inward * (right - left)) / 50;
    return !chalkLine && 2 * widthAt(outline, x) < widthAt(outline, within) ? within : x;
  };
  return {
    lengthNm: first && last ? BigInt(last.at) - BigInt(first.at) : BigInt(right - left) * 1000n,
    widthStartNm: width(end(left, 1), first),
    widthMiddleNm: width((left + right) / 2, middle),
    widthEndNm: width(end(right, -1), last),
  };
}
