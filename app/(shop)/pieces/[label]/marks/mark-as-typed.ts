import { NEW_MARK, type TypedMark } from '@/app/(shop)/pieces/[label]/marks/typed-mark';
import { cellLength } from '@/app/(shop)/pieces/[label]/measure/cell-length';
import type { PieceMarks } from '@/shared/outline/piece-marks';
import type { Point } from '@/shared/outline/point';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { printLengthExact } from '@/shared/units/print-length-exact';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A mark of the piece as it would have been typed, to be changed; undefined where it is gone. */
export function markAsTyped(marks: PieceMarks, id: number, prefer: UnitSystem): TypedMark | undefined {
  const say = (length: Nanometres) => printLengthExact(length, prefer);
  const signed = (um: number) => `${um < 0 ? '-' : ''}${cellLength(nanometres(Math.abs(um) * 1000), prefer)}`;
  const write = (points: readonly Point[]) => points.map(({ x, y }) => `${signed(x)}; ${signed(y)}`).join('\n');

  const endCheck = marks.endChecks.find((mark) => mark.id === id);
  if (endCheck) {
    return { ...NEW_MARK, kind: 'end check', end: endCheck.end, depth: say(endCheck.depth), note: endCheck.note };
  }
  const strap = marks.straps.find((mark) => mark.id === id);
  if (strap) {
    const points = write(strap.from.x === strap.to.x ? [strap.from] : [strap.from, strap.to]);
    return { ...NEW_MARK, kind: 'strap', points, note: strap.note };
  }
  const defect = marks.defects.find((mark) => mark.id === id);
  if (!defect) return undefined;
  const { kind, place, depth, decision, note } = defect;
  return {
    ...NEW_MARK,
    kind,
    decision,
    note,
    ...(place.shape === 'circle'
      ? { shape: 'round', points: write([place.centre]), size: say(nanometres(2000 * place.radius)) }
      : { shape: 'outline', points: write(place.ring) }),
    ...(depth.face === 'through' ? {} : { face: depth.face, depth: say(depth.depth) }),
  };
}
