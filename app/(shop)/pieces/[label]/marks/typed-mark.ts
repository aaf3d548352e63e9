import { readPoints } from '@/app/(shop)/pieces/[label]/marks/read-points';
import { strapThrough } from '@/app/(shop)/pieces/[label]/marks/strap-through';
import { checkDefect } from '@/shared/outline/check-defect';
import { DEFECT_KINDS, type Defect, type DefectKind, type DefectPlace } from '@/shared/outline/defect';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { NewMark } from '@/shared/outline/piece-marks';
import type { Point } from '@/shared/outline/point';
import { thickLine } from '@/shared/outline/thick-line';
import { nanometres } from '@/shared/units/nanometres';
import { parseLength } from '@/shared/units/parse-length';
import { sayLengthError } from '@/shared/units/say-length-error';
import type { UnitSystem } from '@/shared/units/unit-system';

export const MARK_KINDS = [...DEFECT_KINDS, 'end check', 'strap'] as const;
export type MarkKind = (typeof MARK_KINDS)[number];

/** A mark as it is typed or tapped. Points are one a line: along, then across, left above zero. */
export type TypedMark = {
  readonly kind: MarkKind;
  readonly shape: 'round' | 'outline' | 'line';
  /** Of a round one its centre; of the others every point. */
  readonly points: string;
  /** Across a round one; the width of a line. */
  readonly size: string;
  readonly face: 'through' | 'A' | 'B';
  readonly depth: string;
  readonly decision: Defect['decision'];
  readonly end: 'start' | 'end';
  readonly note: string;
};

export const NEW_MARK: TypedMark = {
  kind: 'knot',
  shape: 'round',
  points: '',
  size: '',
  face: 'through',
  depth: '',
  decision: 'keep-out',
  end: 'start',
  note: '',
};

export type ReadMark = {
  readonly mark?: NewMark;
  readonly problems: Readonly<Partial<Record<keyof TypedMark, string>>>;
};

/** Reads a mark for this outline: the mark, or what is wrong beside which field. What is still empty says nothing until `strict`. */
export function readMark(typed: TypedMark, outline: Outline, prefer: UnitSystem, strict: boolean): ReadMark {
  const problems: Partial<Record<keyof TypedMark, string>> = {};
  const length = (field: 'size' | 'depth', ask: string): number | undefined => {
    const text = typed[field].trim();
    if (text === '') {
      if (strict) problems[field] = ask;
      return undefined;
    }
    const read = parseLength(text, { prefer });
    if (read.ok && read.value > 0) return read.value;
    problems[field] = read.ok ? 'It must be more than nothing.' : sayLengthError(read.error, { prefer });
    return undefined;
  };
  const note = typed.note.trim();
  const { left, right } = boundsOf(outline.ring);

  if (typed.kind === 'end check') {
    const depth = length('depth', 'Give how far the deepest check runs in.');
    if (depth === undefined) return { problems };
    if (depth / 1000 >= right - left) return { problems: { depth: 'That is longer than the piece.' } };
    return { mark: { is: 'end-check', end: typed.end, depth: nanometres(depth), note }, problems };
  }

  const points = readPoints(typed.points, prefer);
  if (!points.ok) return { problems: { points: points.says } };
  if (typed.kind === 'strap') {
    const strap = strapThrough(points.points, outline);
    if (strap) return { mark: { is: 'strap', ...strap, note }, problems };
    const off = points.points.length > 0 ? 'There is no wood there.' : 'Tap where the band runs, or type it.';
    return { problems: points.points.length > 0 || strict ? { points: off } : {} };
  }

  const place = placeOf(typed, points.points, length);
  const depth = typed.face === 'through' ? undefined : length('depth', 'Give how deep it goes.');
  if (!place) {
    if (strict) problems.points ??= WANTED[typed.shape];
    return { problems };
  }
  if (typed.face !== 'through' && depth === undefined) return { problems };
  const defect: Defect = {
    kind: typed.kind as DefectKind,
    place,
    depth: typed.face === 'through' ? { face: 'through' } : { face: typed.face, depth: nanometres(depth ?? 0) },
    decision: typed.decision,
  };
  const checked = checkDefect(outline, defect);
  if (checked.ok) return { mark: { is: 'defect', ...defect, note }, problems };
  return { problems: { points: FAULTS[checked.error.code](checked.error.point + 1) } };
}

const WANTED = {
  round: 'Tap its middle on the drawing, or type it: along, across.',
  outline: 'Tap round it: three points at the least.',
  line: 'Tap along it: two points at the least.',
};

const FAULTS = {
  'defect-outside': () => 'None of it lies on the wood.',
  'defect-not-simple': (point: number) => `Its outline crosses itself after point ${point}.`,
  'bad-radius': () => 'Give its size.',
  'bad-depth': () => 'Give how deep it goes.',
  'out-of-range': (point: number) => `Point ${point} is further than 20 m.`,
};

function placeOf(
  { shape }: TypedMark,
  points: readonly Point[],
  length: (field: 'size', ask: string) => number | undefined,
): DefectPlace | undefined {
  if (shape === 'outline') return points.length < 3 ? undefined : { shape: 'polygon', ring: points };
  const size = length('size', shape === 'round' ? 'Give its size across.' : 'Give how wide it is.');
  const [centre] = points;
  if (size === undefined || !centre) return undefined;
  if (shape === 'round') return { shape: 'circle', centre, radius: Math.max(1, Math.round(size / 2000)) };
  const ring = thickLine(points, size / 1000);
  return ring && { shape: 'polygon', ring };
}
