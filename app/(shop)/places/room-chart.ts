import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import { type DryingPoint, dryingSeries } from '@/shared/wood/drying-series';
import { equilibriumMoisture } from '@/shared/wood/equilibrium-moisture';
import type { MoistureReading } from '@/shared/wood/moisture-reading';
import { type Air, type AirDay, type AirSeason, seasonOn } from '@/shared/wood/room-air';

/** What wood settles at on a day, and the air it follows from. */
type SettlesOn = { readonly on: CalendarDate; readonly emc: number; readonly air: Air };

export type ReadWood = {
  readonly label: string;
  readonly title: string;
  readonly readings: readonly MoistureReading[];
};

/** A piece on the chart, by a letter of its own. */
export type WoodOnChart = {
  readonly sign: string;
  readonly label: string;
  readonly title: string;
  readonly points: readonly DryingPoint[];
};

export type RoomRow = {
  readonly on: CalendarDate;
  readonly settles: SettlesOn | undefined;
  readonly wood: readonly { readonly sign: string; readonly mcTenths: number }[];
};

/** Signs that would lie on each other on the chart, in one place. */
export type SignsAt = { readonly on: CalendarDate; readonly mcTenths: number; readonly signs: readonly string[] };

export type RoomChart = {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  /** Runs of days without a gap of more than a week between two. */
  readonly runs: readonly (readonly SettlesOn[])[];
  readonly wood: readonly WoodOnChart[];
  /** Every day something is known of, newest first. */
  readonly rows: readonly RoomRow[];
};

const LETTERS = 26;
const MOST_DAYS = 365;
/** The air of a week without a note is not made up. Common practice. */
const LONGEST_GAP = 7;
const EDGE_DAYS = 3;

/**
 * The air of a room against the wood that stands in it, over no more than the last year: each day's EMC (Equation 4-5 of
 * the Wood Handbook) from its log, or by its seasons where there is no log, and the wettest reading of each piece and day.
 * Undefined while neither is known. Pieces are lettered in the order given: A to Z, then A2 and so on.
 */
export function roomChart(
  {
    days,
    seasons,
    wood,
  }: { readonly days: readonly AirDay[]; readonly seasons: readonly AirSeason[]; readonly wood: readonly ReadWood[] },
  today: CalendarDate,
): RoomChart | undefined {
  const since = addDays(today, -MOST_DAYS);
  const within = ({ on }: { readonly on: CalendarDate }) => on >= since && on <= today;
  const pieces = wood
    .map(({ readings, ...piece }) => ({ ...piece, points: dryingSeries(readings).filter(within) }))
    .filter(({ points }) => points.length > 0)
    .map((piece, at) => ({ sign: signOf(at), ...piece }));
  const logged = days.filter(within).flatMap(({ on, ...air }) => settlesOn(on, air));
  const firsts = [...logged, ...pieces.flatMap(({ points }) => points)].map(({ on }) => on).sort();
  const first = firsts[0] ?? (seasons.length > 0 ? since : undefined);
  if (first === undefined) return undefined;
  const settles = logged.length > 0 ? logged : bySeason(seasons, first, today);
  return {
    from: addDays(first, -EDGE_DAYS),
    to: addDays(today, EDGE_DAYS),
    runs: runsOf(settles),
    wood: pieces,
    rows: rowsOf(settles, pieces, (on) => {
      const season = logged.length > 0 ? undefined : seasonOn(seasons, on);
      return season && settlesOn(on, season)[0];
    }),
  };
}

/**
 * The readings of a chart as they can be drawn: of one day, those closer than `apart` tenths to the one above share a place
 * in the middle of them. 15.2, 15.0 and 12.0 % with `apart` 10 are two places, at 15.1 and 12.0 %.
 */
export function signsApart(wood: readonly WoodOnChart[], apart: number): readonly SignsAt[] {
  const read = wood.flatMap(({ sign, points }) => points.map((point) => ({ ...point, sign })));
  const groups: (typeof read)[] = [];
  for (const each of read.sort((a, b) => (a.on === b.on ? b.mcTenths - a.mcTenths : a.on < b.on ? -1 : 1))) {
    const group = groups.at(-1);
    const last = group?.at(-1);
    if (group && last && last.on === each.on && last.mcTenths - each.mcTenths < apart) group.push(each);
    else groups.push([each]);
  }
  return groups.map((group) => {
    const figures = group.map(({ mcTenths }) => mcTenths);
    return {
      on: group[0]?.on as CalendarDate,
      mcTenths: (Math.max(...figures) + Math.min(...figures)) / 2,
      signs: group.map(({ sign }) => sign).sort(),
    };
  });
}

const signOf = (at: number) =>
  `${String.fromCharCode(65 + (at % LETTERS))}${at < LETTERS ? '' : Math.floor(at / LETTERS) + 1}`;

function settlesOn(on: CalendarDate, air: Air): SettlesOn[] {
  const emc = equilibriumMoisture({ scale: 'C', degrees: air.tenthsC / 10 }, air.humidityTenths / 10);
  return emc.ok ? [{ on, emc: emc.value.value.mc, air }] : [];
}

/** The first and the last day of each season: between them it stays as it is. */
function bySeason(seasons: readonly AirSeason[], from: CalendarDate, to: CalendarDate): SettlesOn[] {
  const found: SettlesOn[] = [];
  let before: AirSeason | undefined;
  for (let on = from; on <= to; on = addDays(on, 1)) {
    const season = seasonOn(seasons, on);
    if (!season) return [];
    const isTurn = season !== before;
    if (isTurn && before) found.push(...settlesOn(addDays(on, -1), before));
    if (isTurn || on === to) found.push(...settlesOn(on, season));
    before = season;
  }
  return found;
}

function runsOf(settles: readonly SettlesOn[]): SettlesOn[][] {
  const runs: SettlesOn[][] = [];
  for (const day of settles) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    const isSame = last && last.air.tenthsC === day.air.tenthsC && last.air.humidityTenths === day.air.humidityTenths;
    if (run && last && (isSame || daysBetween(last.on, day.on) <= LONGEST_GAP)) run.push(day);
    else runs.push([day]);
  }
  return runs;
}

function rowsOf(
  settles: readonly SettlesOn[],
  wood: readonly WoodOnChart[],
  bySeasonOf: (on: CalendarDate) => SettlesOn | undefined,
): RoomRow[] {
  const air = new Map(settles.map((day) => [day.on, day]));
  const read = wood.flatMap(({ sign, points }) => points.map(({ on, mcTenths }) => ({ on, sign, mcTenths })));
  const days = [...new Set([...air.keys(), ...read.map(({ on }) => on)])].sort().reverse();
  return days.map((on) => ({
    on,
    settles: air.get(on) ?? bySeasonOf(on),
    wood: read.filter((each) => each.on === on).map(({ sign, mcTenths }) => ({ sign, mcTenths })),
  }));
}
