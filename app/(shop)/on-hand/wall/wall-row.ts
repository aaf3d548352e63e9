import type { WallSlab } from '@/app/_server/stock/slabs-on-wall';
import { pieceOutline } from '@/app/_ui/piece/piece-outline';
import { linePath, outlinePath, placePath } from '@/app/_ui/slab/paths';
import { coarseRing } from '@/shared/outline/coarse-ring';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';
import { sayPieceFace } from '@/shared/wood/say-piece-size';

/** One slab of the wall: the paths of its drawing in millimetres, and a few words. */
export type WallRow = {
  label: string;
  code: string;
  species: string;
  size: string;
  /** Why it may not be had: promised, held; or what is wrong with it. */
  says: string;
  measured: boolean;
  lengthMm: number;
  box: string;
  wood: string;
  defects: string;
  straps: string;
};

/** A wall is drawn at some ten millimetres to a pixel: what is finer than this does not show. */
const FINE_UM = 3000;
const NM_PER_MM = 1e6;
const ROOM_MM = 12;

/** A slab ready to be drawn small: its measured outline without what is too fine to see, or a sketch from three widths. */
export function wallRow(slab: WallSlab, prefer: UnitSystem): WallRow {
  const { species, label, outline, flags, promisedTo, held } = slab;
  const thick = printLength(slab.thicknessNm, { prefer, style: 'inch-marks' });
  const seen = flags.filter((flag) => !flag.startsWith('live-edge'));
  return {
    label,
    code: printOwnLabel(label),
    species,
    size: `${sayPieceFace(slab, { prefer })}, ${thick} thick`,
    says: [promisedTo ? `for ${promisedTo}` : '', held ? 'held' : '', ...seen].filter(Boolean).join(' · '),
    measured: outline !== null,
    ...(outline ? measured(slab, outline) : sketch(slab)),
  };
}

type Drawn = Pick<WallRow, 'lengthMm' | 'box' | 'wood' | 'defects' | 'straps'>;

function measured({ marks }: WallSlab, outline: NonNullable<WallSlab['outline']>): Drawn {
  const { left, right, bottom, top } = boundsOf(outline.ring);
  const coarse = {
    ring: coarseRing(outline.ring, FINE_UM),
    holes: outline.holes.map((hole) => coarseRing(hole, FINE_UM)),
  };
  const [lengthMm, widthMm] = [(right - left) / 1000, (top - bottom) / 1000];
  return {
    lengthMm,
    box: boxOf(left / 1000, -top / 1000, lengthMm, widthMm),
    wood: outlinePath(coarse),
    defects: marks.defects.map(({ place }) => placePath(place)).join(''),
    straps: marks.straps.map(({ from, to }) => linePath(from, to)).join(''),
  };
}

function sketch({ label, lengthNm, widthStartNm, widthMiddleNm, widthEndNm, flags }: WallSlab): Drawn {
  const lengthMm = lengthNm / NM_PER_MM;
  const widths = { start: widthStartNm / NM_PER_MM, middle: widthMiddleNm / NM_PER_MM, end: widthEndNm / NM_PER_MM };
  const liveEdges = { left: flags.includes('live-edge-left'), right: flags.includes('live-edge-right') };
  const { left, right, widestMm } = pieceOutline({ lengthMm, widthsMm: widths, liveEdges }, label);
  const um = ({ x, y }: { x: number; y: number }) => ({ x: x * 1000, y: -y * 1000 });
  const ring = coarseRing([...left, ...[...right].reverse()].map(um), FINE_UM);
  return {
    lengthMm,
    box: boxOf(0, (-widestMm * 1.08) / 2, lengthMm, widestMm * 1.08),
    wood: outlinePath({ ring, holes: [] }),
    defects: '',
    straps: '',
  };
}

const boxOf = (x: number, y: number, length: number, width: number) =>
  [x - ROOM_MM, y - ROOM_MM, length + 2 * ROOM_MM, width + 2 * ROOM_MM].map(Math.round).join(' ');
