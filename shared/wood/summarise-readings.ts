import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Nanometres } from '@/shared/units/nanometres';
import { meterRange } from '@/shared/wood/meter-range';
import { type MoistureReading, takenAs } from '@/shared/wood/moisture-reading';

export type ReadingCaution =
  /** Fewer on the newest day than the piece needs. */
  | { readonly code: 'too-few'; readonly count: number; readonly needed: number }
  /** So many of them lie close to an end, where wood dries first. */
  | { readonly code: 'near-the-end'; readonly count: number; readonly keepAway: Nanometres }
  | { readonly code: 'above-the-meter'; readonly mcTenths: number; readonly sureTo: number; readonly to: number }
  | { readonly code: 'below-the-meter'; readonly mcTenths: number; readonly from: number }
  /** Thick, and nobody read its middle. */
  | { readonly code: 'core-not-read'; readonly thickness: Nanometres }
  /** The middle is wetter than the faces by two points or more: it will move after flattening. */
  | { readonly code: 'core-wetter'; readonly coreTenths: number; readonly shellTenths: number }
  | { readonly code: 'place-not-noted'; readonly count: number }
  | { readonly code: 'meters-differ' };

export type ReadingSummary = {
  readonly on: CalendarDate;
  readonly readings: readonly MoistureReading[];
  /** The figure of the piece: never the mean. */
  readonly wettest: MoistureReading;
  readonly driest: MoistureReading;
  readonly coreTenths: number | null;
  readonly shellTenths: number | null;
  readonly cautions: readonly ReadingCaution[];
};

export type PieceSize = { readonly length?: Nanometres; readonly thickness?: Nanometres };

/** Readings closer than 10 in to an end mislead (forum practice). */
const KEEP_AWAY = 254_000_000;
/** Three, and one more for each metre past the second. Common practice. */
const LEAST_READINGS = 3;
const METRE = 1_000_000_000;
/** Thicker than this wants a reading at depth: 1 1/2 in. Common practice. */
const THICK = 38_100_000;
/** The core begins a third of the thickness down, the shell ends a sixth down. Common practice. */
const CORE_FROM = 1 / 3;
const SHELL_TO = 1 / 6;
/** Core over shell from which it is worth a word, tenths of a per cent. Common practice. */
const CORE_WETTER_BY = 20;

const wettestOf = (readings: readonly MoistureReading[]): number | null =>
  readings.length ? Math.max(...readings.map(takenAs)) : null;

/**
 * What the readings of the newest day say of a piece: its wettest figure, the core against the shell where depth was
 * noted, and every caution; `null` without readings. The core is from a third of the thickness down, the shell down to a
 * sixth, each counted by its wettest reading. Lengths and thickness sharpen the cautions and may be left out. Cautions:
 * too few, near an end, outside what the meter can say (Wood Handbook, Chapter 13), core not read in thick stock, core
 * wetter than the shell by 2.0 points or more, place not noted, more than one kind of meter. A 7 % mean that hides a 10 %
 * core and a 4 % shell comes out as 10 %, with `core-wetter`.
 */
export function summariseReadings(readings: readonly MoistureReading[], size: PieceSize = {}): ReadingSummary | null {
  const on = readings
    .map((each) => each.on)
    .sort()
    .at(-1);
  if (on === undefined) return null;
  const newest = readings.filter((each) => each.on === on).sort((a, b) => takenAs(b) - takenAs(a));
  const [wettest] = newest;
  const driest = newest.at(-1);
  if (!wettest || !driest) return null;
  const { thickness } = size;
  const atDepth = (fits: (share: number) => boolean) =>
    newest.filter(({ depth }) => {
      if (depth === undefined || !thickness) return false;
      // Pins driven past the middle are nearer to the other face.
      return fits(Math.min(depth, Math.max(0, thickness - depth)) / thickness);
    });
  const coreTenths = wettestOf(atDepth((share) => share >= CORE_FROM));
  const shellTenths = wettestOf(atDepth((share) => share <= SHELL_TO));
  return {
    on,
    readings: newest,
    wettest,
    driest,
    coreTenths,
    shellTenths,
    cautions: cautionsOf(newest, size, coreTenths, shellTenths),
  };
}

function cautionsOf(
  newest: readonly MoistureReading[],
  { length, thickness }: PieceSize,
  coreTenths: number | null,
  shellTenths: number | null,
): readonly ReadingCaution[] {
  const cautions: ReadingCaution[] = [];
  const needed = LEAST_READINGS + Math.max(0, Math.ceil((length ?? 0) / METRE) - 2);
  if (newest.length < needed) cautions.push({ code: 'too-few', count: newest.length, needed });
  // A short piece has no place further from both ends than its middle third.
  const keepAway = length === undefined ? KEEP_AWAY : Math.min(KEEP_AWAY, Math.floor(length / 3));
  const near = newest.filter(
    ({ along }) => along !== undefined && (along < keepAway || (length !== undefined && length - along < keepAway)),
  );
  if (near.length) cautions.push({ code: 'near-the-end', count: near.length, keepAway: keepAway as Nanometres });
  for (const reading of newest) {
    const { from, to, sureTo } = meterRange(reading.meter);
    if (reading.rawTenths > sureTo) {
      cautions.push({ code: 'above-the-meter', mcTenths: reading.rawTenths, sureTo, to });
    } else if (reading.rawTenths < from) {
      cautions.push({ code: 'below-the-meter', mcTenths: reading.rawTenths, from });
    }
  }
  if (thickness !== undefined && thickness > THICK && coreTenths === null) {
    cautions.push({ code: 'core-not-read', thickness });
  }
  if (coreTenths !== null && shellTenths !== null && coreTenths - shellTenths >= CORE_WETTER_BY) {
    cautions.push({ code: 'core-wetter', coreTenths, shellTenths });
  }
  const unplaced = newest.filter(({ along }) => along === undefined).length;
  if (unplaced) cautions.push({ code: 'place-not-noted', count: unplaced });
  if (new Set(newest.map(({ meter }) => meter)).size > 1) cautions.push({ code: 'meters-differ' });
  return cautions;
}
