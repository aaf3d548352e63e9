import { readPoints } from '@/app/(shop)/pieces/[label]/marks/read-points';
import type { LineWay, NamedLine } from '@/shared/outline/cut-line';
import { fenceLine } from '@/shared/outline/fence-line';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { micrometres, type Point } from '@/shared/outline/point';
import { nanometres } from '@/shared/units/nanometres';
import { parseLength } from '@/shared/units/parse-length';
import { sayLengthError } from '@/shared/units/say-length-error';
import type { UnitSystem } from '@/shared/units/unit-system';

/** Where a distance is counted from: an end for a cross-cut, the chalk line or an edge for a rip. */
export const LINE_FROM = ['start', 'end', 'line', 'left', 'right'] as const;
type LineFrom = (typeof LINE_FROM)[number];

/** One line as it is typed or tapped. */
export type TypedLine = {
  readonly way: LineWay;
  readonly from: LineFrom;
  readonly distance: string;
  /** Of a free line and a break: one point a line, along; across. */
  readonly points: string;
  /** The only piece it goes through; null goes through all. */
  readonly within: Point | null;
};

export const newLine = (way: LineWay): TypedLine => ({
  way,
  from: way === 'rip' ? 'line' : 'start',
  distance: '',
  points: '',
  within: null,
});

export type ReadLines = {
  /** Those that are whole, with the number of each in what was typed. */
  readonly lines: readonly { readonly line: NamedLine; readonly nr: number }[];
  readonly kerfUm: number | undefined;
  readonly problems: Readonly<Record<string, string>>;
};

/** Reads every line for this outline; what is still empty says nothing until `strict`. */
export function readLines(
  typed: readonly TypedLine[],
  kerf: string,
  outline: Outline,
  prefer: UnitSystem,
  strict: boolean,
): ReadLines {
  const problems: Record<string, string> = {};
  const isSawn = typed.some(({ way }) => way !== 'break');
  const width = isSawn ? readKerf(kerf, prefer) : 0;
  if (typeof width === 'string') problems.kerf = width;
  const kerfUm = typeof width === 'number' ? width : undefined;
  const lines = typed.flatMap((each, nr) => {
    const points = pointsOf(each, outline, prefer, strict);
    if (typeof points === 'string') {
      if (points !== '') problems[`lines.${nr}.${isDrawn(each) ? 'points' : 'distance'}`] = points;
      return [];
    }
    if (kerfUm === undefined) return [];
    const within = each.within ? { within: each.within } : {};
    return [{ nr, line: { way: each.way, points, kerf: each.way === 'break' ? 0 : kerfUm, ...within } }];
  });
  return { lines, kerfUm, problems };
}

export const isDrawn = ({ way }: TypedLine) => way === 'free' || way === 'break';

/** A kerf in micrometres, or what is wrong with it. */
export function readKerf(text: string, prefer: UnitSystem): number | string {
  if (text.trim() === '') return 'Give what the saw takes.';
  const read = parseLength(text, { prefer });
  if (!read.ok) return sayLengthError(read.error, { prefer });
  const um = micrometres(read.value);
  if (um === 0) return 'A saw takes something. Where it takes nothing, the wood is broken: choose a break.';
  return um > 50_000 ? 'That is wider than a saw cuts. Check its unit.' : um;
}

/** The points of a line, or what is wrong with them: nothing to be said is ''. */
function pointsOf(line: TypedLine, outline: Outline, prefer: UnitSystem, strict: boolean): readonly Point[] | string {
  if (isDrawn(line)) {
    const read = readPoints(line.points, prefer);
    if (!read.ok) return read.says;
    return read.points.length < 2 ? (strict ? 'Tap or type two points at the least.' : '') : read.points;
  }
  const text = line.distance.trim();
  if (text === '') return strict ? 'Give how far, or tap the drawing.' : '';
  const isBelow = line.from === 'line' && /^[-−]/.test(text);
  const read = parseLength(isBelow ? text.slice(1) : text, { prefer });
  if (!read.ok) return sayLengthError(read.error, { prefer });
  const far = micrometres(nanometres(read.value)) * (isBelow ? -1 : 1);
  const { left, right } = boundsOf(outline.ring);
  if (line.way === 'cross') {
    if (far >= right - left) return 'That is beyond the end of the piece.';
    const x = line.from === 'end' ? right - far : left + far;
    return [
      { x, y: 0 },
      { x, y: 1000 },
    ];
  }
  if (line.from === 'left' || line.from === 'right') return fenceLine(outline, line.from, far);
  return [
    { x: left, y: far },
    { x: right, y: far },
  ];
}
