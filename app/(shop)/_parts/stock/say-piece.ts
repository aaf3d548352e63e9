import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { PieceMark } from '@/app/_ui/piece/piece-mark';
import type { RoughShape } from '@/app/_ui/piece/piece-outline';
import type { UnitSystem } from '@/shared/units/unit-system';
import { sayPieceFace, sayPieceSize } from '@/shared/wood/say-piece-size';

const NM_PER_MM = 1_000_000;

type Measured = Pick<
  PieceLine,
  'form' | 'species' | 'lengthNm' | 'widthStartNm' | 'widthMiddleNm' | 'widthEndNm' | 'thicknessNm' | 'facts'
>;

/** A piece in words and as a shape: "Walnut slab", "2,600 mm long, 800 to 850 mm wide, 54 mm thick". */
export function sayPiece(
  piece: Measured,
  prefer: UnitSystem,
): { title: string; size: string; onWood: string; drawn: string; shape: RoughShape } {
  const size = sayPieceSize(piece, { prefer });
  const flags = piece.facts.flags;
  const seen = flags.filter((flag) => !flag.startsWith('live-edge'));
  const title = `${piece.species} ${piece.form}`;
  return {
    title,
    size,
    onWood: sayPieceFace(piece, { prefer }),
    drawn: `${title}, ${size}${seen.length ? `, ${seen.join(', ')}` : ''}`,
    shape: {
      lengthMm: Number(piece.lengthNm) / NM_PER_MM,
      widthsMm: {
        start: Number(piece.widthStartNm) / NM_PER_MM,
        middle: Number(piece.widthMiddleNm) / NM_PER_MM,
        end: Number(piece.widthEndNm) / NM_PER_MM,
      },
      liveEdges: { left: flags.includes('live-edge-left'), right: flags.includes('live-edge-right') },
    },
  };
}

/**
 * Signs on the drawing for what is wrong with a piece. Where a crack or a band is was not measured: the signs stand at
 * fixed places, and the words beside a drawing say so.
 */
export function pieceMarks(piece: Measured): PieceMark[] {
  const lengthMm = Number(piece.lengthNm) / NM_PER_MM;
  const has = (flag: string) => piece.facts.flags.some((each) => each === flag);
  return [
    ...(has('checked')
      ? [{ kind: 'check' as const, end: 'end' as const, lengthMm: lengthMm * 0.14, across: 0.45 }]
      : []),
    ...(has('broken') ? [{ kind: 'break' as const, atMm: lengthMm * 0.3 }] : []),
    ...(has('strapped') ? [0.12, 0.8].map((part) => ({ kind: 'strap' as const, atMm: lengthMm * part })) : []),
  ];
}
