import { checkDefect } from '@/shared/outline/check-defect';
import { DEFECT_KINDS, type Defect, type DefectKind, type DefectPlace } from '@/shared/outline/defect';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { NewMark } from '@/shared/outline/piece-marks';
import { micrometres, type Point } from '@/shared/outline/point';
import { thickLine } from '@/shared/outline/thick-line';
import { woodRunsAt } from '@/shared/outline/wood-runs-at';
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

/** The band through one point straight across, or through two, as far as the wood goes at both its edges. */
function strapThrough(points: readonly Point[], outline: Outline): { from: Point; to: Point } | undefined {
  const [one, two = one] = points;
  if (!one || !two) return undefined;
  const edge = (x: number, pick: 'low' | 'high') => {
    const runs = woodRunsAt(outline, x);
    const ends = runs.map(({ from, to }) => (pick === 'low' ? from : to));
    return ends.length ? Math.round(pick === 'low' ? Math.min(...ends) : Math.max(...ends)) : undefined;
  };
  const [upper, lower] = one.y >= two.y ? [one, two] : [two, one];
  const [high, low] = [edge(upper.x, 'high'), edge(lower.x, 'low')];
  if (high === undefined || low === undefined) return undefined;
  return { from: { x: lower.x, y: low }, to: { x: upper.x, y: high } };
}

/** Points typed one a line, `1200, -85` or `47 1/4; -3 3/8`. */
export function readPoints(
  text: string,
  prefer: UnitSystem,
): { ok: true; points: Point[] } | { ok: false; says: string } {
  const points: Point[] = [];
  for (const [nr, line] of text
    .split('\n')
    .map((each) => each.trim())
    .entries()) {
    if (line === '') continue;
    const parts = line.split(/\s*[;,]\s*/);
    const [x, y] = parts.map((part) => signed(part, prefer));
    if (parts.length !== 2 || x === undefined || y === undefined) {
      return { ok: false, says: `Line ${nr + 1} is no point. Write along and across, for example 1200, -85.` };
    }
    points.push({ x, y });
  }
  return { ok: true, points };
}

function signed(text: string, prefer: UnitSystem): number | undefined {
  const isBelow = /^[-−]/.test(text);
  const read = parseLength(isBelow ? text.slice(1) : text, { prefer });
  if (!read.ok) return undefined;
  return isBelow ? -micrometres(read.value) + 0 : micrometres(read.value);
}
