import { cellLength } from '@/app/(shop)/pieces/[label]/measure/cell-length';
import { doubtfulStation } from '@/shared/outline/doubtful-station';
import type { Outline } from '@/shared/outline/outline';
import { outlineFromStations } from '@/shared/outline/outline-from-stations';
import { micrometres } from '@/shared/outline/point';
import { sayOutlineFault } from '@/shared/outline/say-outline-fault';
import type { ChalkLine, Station, StationValue } from '@/shared/outline/station';
import type { Nanometres } from '@/shared/units/nanometres';
import { nanometres } from '@/shared/units/nanometres';
import { parseLength } from '@/shared/units/parse-length';
import { sayLengthError } from '@/shared/units/say-length-error';
import type { UnitSystem } from '@/shared/units/unit-system';

export const STATION_VALUES = ['at', 'left', 'right'] as const;

/** A station as it is typed. */
export type TypedStation = Record<(typeof STATION_VALUES)[number], string>;

/** What is typed down the line: the stations of the slab, and those of each gap. */
export type TypedChalk = {
  readonly stations: readonly TypedStation[];
  readonly gaps: readonly (readonly TypedStation[])[];
};

/** Names one typed value: `0.left` on the slab, `g1.0.left` in its second gap. */
export const valueKey = ({ gap, station, value }: StationValue) =>
  `${gap === undefined ? '' : `g${gap}.`}${station}.${value}`;

export const EMPTY_STATION: TypedStation = { at: '', left: '', right: '' };

export type ReadChalk = {
  /** The stations that are whole, in the order they were typed: what can be drawn so far. */
  readonly line: ChalkLine;
  /** Where each typed value of a whole station lies on the drawing, micrometres. */
  readonly places: readonly { readonly key: string; readonly x: number; readonly y: number }[];
  /** What is wrong beside which value. */
  readonly problems: Readonly<Record<string, string>>;
  /** The value that most looks like a slip, where nothing is wrong. */
  readonly doubt: string | undefined;
  readonly outline: Outline | undefined;
};

/** Reads what is typed so far. A row of three empty fields is no station yet; a row with some of them waits for the rest. */
export function readChalk(typed: TypedChalk, prefer: UnitSystem): ReadChalk {
  const problems: Record<string, string> = {};
  const slab = readRun(typed.stations, undefined, prefer, problems);
  const gaps = typed.gaps.map((run, gap) => readRun(run, gap, prefer, problems));
  const line: ChalkLine = {
    stations: slab.map(({ station }) => station),
    gaps: gaps.filter((run) => run.length > 0).map((run) => ({ stations: run.map(({ station }) => station) })),
  };
  const places = [slab, ...gaps].flatMap((run, nr) =>
    run.flatMap(({ row, station: { at, left, right } }) => {
      const key = (value: StationValue['value']) => valueKey({ ...(nr > 0 && { gap: nr - 1 }), station: row, value });
      const x = micrometres(at);
      return [
        { key: key('at'), x, y: 0 },
        { key: key('left'), x, y: micrometres(left) },
        { key: key('right'), x, y: -micrometres(right) },
      ];
    }),
  );
  const asTyped = ({ gap, station, value }: StationValue): string => {
    const typedGap = gap === undefined ? undefined : gaps.flatMap((run, nr) => (run.length ? [nr] : []))[gap];
    const run = typedGap === undefined ? slab : gaps[typedGap];
    return valueKey({
      ...(typedGap !== undefined && { gap: typedGap }),
      station: run?.[station]?.row ?? station,
      value,
    });
  };
  if (line.stations.length < 2) return { line, places, problems, doubt: undefined, outline: undefined };
  const made = outlineFromStations(line);
  if (!made.ok) {
    const { says, toDo } = sayOutlineFault(made.error.code);
    return {
      line,
      places,
      problems: { [asTyped(made.error)]: `${says} ${toDo}`, ...problems },
      doubt: undefined,
      outline: undefined,
    };
  }
  const doubt = doubtfulStation(line.stations);
  return { line, places, problems, doubt: doubt && asTyped(doubt), outline: made.value };
}

/** What still has to be typed before it can go into the book: the empty fields of rows that were begun. */
export function unfinished(typed: TypedChalk): Record<string, string> {
  const missing: Record<string, string> = {};
  const look = (run: readonly TypedStation[], gap: number | undefined) =>
    run.forEach((row, station) => {
      if (isEmpty(row)) return;
      for (const value of STATION_VALUES) {
        const key = valueKey({ ...(gap !== undefined && { gap }), station, value });
        if (row[value].trim() === '') missing[key] = 'This one is still empty.';
      }
    });
  look(typed.stations, undefined);
  typed.gaps.forEach(look);
  return missing;
}

/** Rows in the order they lie along the line; those without a place that reads stay at the end. */
export function inOrder(rows: readonly TypedStation[], prefer: UnitSystem): readonly TypedStation[] {
  const place = ({ at }: TypedStation) => {
    const read = readSigned(at.trim(), prefer);
    return at.trim() !== '' && read.ok ? read.value : Number.POSITIVE_INFINITY;
  };
  return [...rows].sort((a, b) => (place(a) === place(b) ? 0 : place(a) - place(b)));
}

/** A measured line as it would have been typed. */
export function chalkAsTyped({ stations, gaps = [] }: ChalkLine, prefer: UnitSystem): TypedChalk {
  const say = (length: Nanometres) =>
    length < 0 ? `-${cellLength(nanometres(-length), prefer)}` : cellLength(length, prefer);
  const typed = ({ at, left, right }: Station) => ({ at: say(at), left: say(left), right: say(right) });
  return { stations: stations.map(typed), gaps: gaps.map((gap) => gap.stations.map(typed)) };
}

const isEmpty = (row: TypedStation) => STATION_VALUES.every((value) => row[value].trim() === '');

type ReadStation = { readonly row: number; readonly station: Station };

function readRun(
  run: readonly TypedStation[],
  gap: number | undefined,
  prefer: UnitSystem,
  problems: Record<string, string>,
): ReadStation[] {
  return run.flatMap((row, index) => {
    const read = STATION_VALUES.map((value) => {
      const text = row[value].trim();
      if (text === '') return undefined;
      const length = readSigned(text, prefer);
      if (length.ok) return length.value;
      problems[valueKey({ ...(gap !== undefined && { gap }), station: index, value })] = length.says;
      return undefined;
    });
    const [at, left, right] = read;
    if (at === undefined || left === undefined || right === undefined) return [];
    return [{ row: index, station: { at, left, right } }];
  });
}

/** A distance to an edge is below zero where the edge has crossed the line. */
function readSigned(text: string, prefer: UnitSystem): { ok: true; value: Nanometres } | { ok: false; says: string } {
  const isBelow = /^[-−]/.test(text);
  const read = parseLength(isBelow ? text.slice(1) : text, { prefer });
  if (!read.ok) return { ok: false, says: sayLengthError(read.error, { prefer }) };
  return { ok: true, value: isBelow ? nanometres(-read.value + 0) : read.value };
}
