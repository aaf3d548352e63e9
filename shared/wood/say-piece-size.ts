import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/** The measures of a piece: its length, its thickness, and its width at the start, half way and the end. */
type PieceMeasures = {
  readonly lengthNm: Nanometres;
  readonly widthStartNm: Nanometres;
  readonly widthMiddleNm: Nanometres;
  readonly widthEndNm: Nanometres;
  readonly thicknessNm: Nanometres;
  /** The narrowest and the widest of its outline, where it was measured. */
  readonly usable?: { readonly narrowest: Nanometres; readonly widest: Nanometres } | null;
};

type Print = { readonly prefer: UnitSystem };

/** The measures each with its word: `7' 5" long, 23 1/8" to 30" wide, 2" thick`. The width is `sayWidths`. */
export function sayPieceSize(piece: PieceMeasures, print: Print): string {
  const thick = printLength(piece.thicknessNm, { ...print, style: 'inch-marks' });
  return `${printLength(piece.lengthNm, print)} long, ${sayWidths(piece, print)} wide, ${thick} thick`;
}

/** Length and width alone, short enough for a drawing: `7' 5" × 23 1/8" to 30"`. */
export function sayPieceFace(piece: PieceMeasures, print: Print): string {
  return `${printLength(piece.lengthNm, print)} × ${sayWidths(piece, print)}`;
}

/**
 * The width of a piece wherever it is said: by its outline, or else of the three that were measured, the narrowest to the
 * widest, `650 to 720 mm`; one alone where they print the same.
 */
export function sayWidths(piece: PieceMeasures, { prefer }: Print): string {
  const { usable } = piece;
  const widths = usable
    ? [usable.narrowest, usable.widest]
    : [piece.widthStartNm, piece.widthMiddleNm, piece.widthEndNm];
  const [least, most] = [Math.min(...widths), Math.max(...widths)].map((nm) =>
    printLength(nanometres(nm), { prefer, style: 'inch-marks' }),
  );
  return least === most ? `${most}` : `${least?.replace(/ mm$/, '')} to ${most}`;
}
