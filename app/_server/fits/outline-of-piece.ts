import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { Outline } from '@/shared/outline/outline';
import { outlineFromStations, type StationRefusal } from '@/shared/outline/outline-from-stations';
import type { Station } from '@/shared/outline/station';
import { ok, type Result } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';

type Measured = Pick<PieceLine, 'lengthNm' | 'widthStartNm' | 'widthMiddleNm' | 'widthEndNm'> &
  Partial<Pick<PieceLine, 'shape'>>;

/**
 * The outline the book can vouch for today: the one measured, or else its three widths as stations at the start, half way and at the end of a
 * straight middle line, half of each width to either side, joined by straight edges. Lengths in nanometres give points in
 * micrometres. What bends, bulges or narrows between the stations is not in it. A piece of 2000 mm with widths of 500,
 * 400 and 500 mm has six corners, the waist at (1 000 000, ±200 000).
 */
export function outlineOfPiece(piece: Measured): Result<Outline, StationRefusal> {
  if (piece.shape) return ok(piece.shape.outline);
  const station = (at: number, width: Nanometres): Station => {
    const left = nanometres(Math.floor(width / 2));
    return { at: nanometres(at), left, right: nanometres(width - left) };
  };
  return outlineFromStations({
    stations: [
      station(0, piece.widthStartNm),
      station(Math.floor(piece.lengthNm / 2), piece.widthMiddleNm),
      station(piece.lengthNm, piece.widthEndNm),
    ],
  });
}
