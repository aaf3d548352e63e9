import { ringOf, ringText } from '@/app/_server/shapes/kept-outline';
import type { Defect, DefectPlace } from '@/shared/outline/defect';
import type { NewMark, PieceMarks } from '@/shared/outline/piece-marks';
import type { Point } from '@/shared/outline/point';
import { nanometres } from '@/shared/units/nanometres';

/** The columns of a mark that stands. */
export const markSelect = {
  id: true,
  kind: true,
  place: true,
  face: true,
  depthNm: true,
  decision: true,
  note: true,
} as const;

export type MarkRow = {
  id: number;
  kind: string;
  place: string;
  face: string;
  depthNm: bigint | null;
  decision: string;
  note: string;
};

type KeptPlace =
  | { circle: [x: number, y: number, radius: number] }
  | { polygon: [number, number][] }
  | { line: [x1: number, y1: number, x2: number, y2: number] }
  | { end: 'start' | 'end' };

/** The marks of a piece, sorted by what they are. */
export function readMarks(rows: readonly MarkRow[]): PieceMarks {
  const defects: PieceMarks['defects'][number][] = [];
  const endChecks: PieceMarks['endChecks'][number][] = [];
  const straps: PieceMarks['straps'][number][] = [];
  for (const row of rows) {
    const { id, note } = row;
    const place = JSON.parse(row.place) as KeptPlace;
    if ('end' in place) endChecks.push({ id, note, end: place.end, depth: nanometres(row.depthNm ?? 0n) });
    else if ('line' in place) {
      const [x1, y1, x2, y2] = place.line;
      straps.push({ id, note, from: { x: x1, y: y1 }, to: { x: x2, y: y2 } });
    } else defects.push({ id, note, ...defectOf(row, place) });
  }
  return { defects, endChecks, straps };
}

function defectOf(row: MarkRow, place: { circle: [number, number, number] } | { polygon: [number, number][] }): Defect {
  return {
    kind: row.kind as Defect['kind'],
    place: 'circle' in place ? circleOf(place.circle) : { shape: 'polygon', ring: ringOf(place.polygon) },
    depth:
      row.face === 'through'
        ? { face: 'through' }
        : { face: row.face as 'A' | 'B', depth: nanometres(row.depthNm ?? 0n) },
    decision: row.decision as Defect['decision'],
  };
}

const circleOf = ([x, y, radius]: [number, number, number]): DefectPlace => ({
  shape: 'circle',
  centre: { x, y },
  radius,
});

/** The columns of a mark to be written. An end check and a strap are kept out of a top by their nature. */
export function markColumns(mark: NewMark): Omit<MarkRow, 'id'> {
  const { note } = mark;
  if (mark.is === 'end-check') {
    const place = JSON.stringify({ end: mark.end });
    return { kind: 'end-check', place, face: 'through', depthNm: BigInt(mark.depth), decision: 'keep-out', note };
  }
  if (mark.is === 'strap') {
    const place = JSON.stringify({ line: [...pair(mark.from), ...pair(mark.to)] });
    return { kind: 'strap', place, face: 'through', depthNm: null, decision: 'leave', note };
  }
  const { kind, decision, depth, place } = mark;
  const kept =
    place.shape === 'circle' ? { circle: [...pair(place.centre), place.radius] } : { polygon: ringText(place.ring) };
  return {
    kind,
    place: JSON.stringify(kept),
    face: depth.face,
    depthNm: depth.face === 'through' ? null : BigInt(depth.depth),
    decision,
    note,
  };
}

const pair = ({ x, y }: Point) => [x, y] as const;
