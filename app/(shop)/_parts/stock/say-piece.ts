import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { PieceMark } from '@/app/_ui/piece/piece-mark';
import type { RoughShape } from '@/app/_ui/piece/piece-outline';
import type { UnitSystem } from '@/shared/units/unit-system';
import { packFigures, sayPackSize } from '@/shared/wood/pack-figures';
import { sayPieceFace, sayPieceSize } from '@/shared/wood/say-piece-size';

const NM_PER_MM = 1_000_000;

type Measured = Pick<
  PieceLine,
  'form' | 'species' | 'lengthNm' | 'widthStartNm' | 'widthMiddleNm' | 'widthEndNm' | 'thicknessNm' | 'facts'
> &
  Partial<Pick<PieceLine, 'boards' | 'quarters' | 'surfacing' | 'grain'>>;

/**
 * A piece in words and as a shape: "Walnut slab", "2,600 mm long, 800 to 850 mm wide, 54 mm thick". A pack is said by its
 * boards, and has no shape of its own.
 */
export function sayPiece(
  piece: Measured,
  prefer: UnitSystem,
): { title: string; size: string; onWood: string; drawn: string; shape: RoughShape } {
  const pack = piece.form === 'pack' ? packFigures(piece) : undefined;
  const size = pack ? sayPackSize(pack) : `${sayPieceSize(piece, { prefer })}${sayGrain(piece.grain)}`;
  const flags = piece.facts.flags;
  const seen = flags.filter((flag) => !flag.startsWith('live-edge'));
  const title = `${piece.species} ${piece.form}`;
  return {
    title,
    size,
    onWood: pack ? size : sayPieceFace(piece, { prefer }),
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

const GRAIN_WORDS = {
  length: ', grain along its length',
  width: ', grain along its width',
  none: ', no grain',
  '': '',
};

const sayGrain = (grain: PieceLine['grain'] | undefined) => GRAIN_WORDS[grain ?? ''];

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
