import type { Figure } from '@/app/(shop)/pieces/_ui/figure-list';
import type { FiguredPiece, PlacedWidth } from '@/app/(shop)/pieces/figured-piece';
import type { BoardMeasure } from '@/app/(shop)/pieces/work-out-board-feet';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';
import { explained } from '@/shared/wood/explained';
import type { PieceForm } from '@/shared/wood/piece';

/** One square foot, (12 × 25.4 mm)², in square metres. */
const SQUARE_FOOT = 0.3048 ** 2;

/** How much wood a piece is, as numbers that open to how they were reckoned. */
export function sizeFigures(piece: FiguredPiece, measure: BoardMeasure, prefer: UnitSystem): readonly Figure[] {
  const { squareMetres, cubicMetres, boardFeet, sellers } = measure;
  const face =
    prefer === 'imperial'
      ? `${(squareMetres.value / SQUARE_FOOT).toFixed(2)} sq ft`
      : `${squareMetres.value.toFixed(3)} m²`;
  return [
    { term: 'Face', value: face, how: squareMetres.how },
    { term: 'Volume', value: `${cubicMetres.value.toFixed(4)} m³`, how: [cubicMetres.how, squareMetres.how] },
    ...(piece.form === 'sheet'
      ? []
      : [
          {
            term: 'Board feet, what is there',
            value: boardFeet.value.toFixed(2),
            how: [boardFeet.how, cubicMetres.how, squareMetres.how],
          },
        ]),
    ...(sellers
      ? [
          {
            term: 'Board feet, by the rule for boards',
            value: String(sellers.boardFeet.value),
            how: [sellers.boardFeet.how, sellers.surface.how, ...(sellers.width ? [sellers.width.how] : [])],
          },
        ]
      : []),
    ...(piece.measured ? widthFigures(piece.measured, prefer) : []),
  ];
}

function widthFigures(
  { points, narrowest, widest }: NonNullable<FiguredPiece['measured']>,
  prefer: UnitSystem,
): readonly Figure[] {
  const say = (length: number) => printLength(nanometres(length), { prefer, style: 'inches' });
  const figure = (term: string, { width, along }: PlacedWidth): Figure => ({
    term,
    value: `${say(width)}, at ${say(along)}`,
    how: explained(width, 'usable-width', { alongMm: along / 1e6, points }).how,
  });
  return [figure('Narrowest', narrowest), figure('Widest', widest)];
}

/** How what a seller counts by the rule for boards lies to what is there. */
export function sayDifference(
  { boardFeet, share }: { boardFeet: number; share: number | null },
  form: PieceForm,
): string {
  const percent = share === null ? '' : `, ${Math.abs(Math.round(share * 100))} %`;
  const slab = form === 'slab' ? ' Slabs are often counted another way: ask the seller.' : '';
  if (Math.abs(boardFeet) < 0.005) return `The rule counts what is there.${slab}`;
  const why =
    form === 'slab'
      ? 'it drops parts of a foot and takes one width for all.'
      : boardFeet > 0
        ? 'whole feet of surface, and the thickness before planing.'
        : 'parts of a foot are dropped, and the board is fuller than its name.';
  return `The rule counts ${Math.abs(boardFeet).toFixed(2)} ${boardFeet > 0 ? 'more' : 'less'} than is there${percent}: ${why}${slab}`;
}
