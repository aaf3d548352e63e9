import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok } from '@/shared/result/result';
import { printTemperature } from '@/shared/units/print-temperature';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import { equilibriumMoisture } from '@/shared/wood/equilibrium-moisture';
import { WARMEST_TENTHS } from '@/shared/wood/room-air';

/** The air of a room on a day: tenths of a degree Celsius and tenths of a per cent. */
export type AirOfDay = { takenOn: CalendarDate; tenthsC: number; humidityTenths: number };

/** Hotter than any room; the book keeps no more. */
const HOTTEST_TENTHS = 800;
/** Ten years of days. */
export const MOST_LINES = 3660;

/**
 * Writes the air of a place, a line for each day. A day that stands there already, figure for figure, is not written twice;
 * a day that is written again with other figures is put right: of a day the line written last counts.
 */
export const logAir: Command<{ label: string; lines: readonly AirOfDay[] }, { kept: number; known: number }> = (
  book,
  by,
  input,
) =>
  writeEntry(book, { ...by, kind: 'air-logged', request: input }, async (pen) => {
    const place = await pen.tx.place.findUnique({ where: { label: input.label }, select: { id: true } });
    if (!place) return err({ code: 'not-found' });
    const { lines } = input;
    if (lines.length === 0 || lines.length > MOST_LINES) return err({ code: 'outside-range', field: 'lines' });
    const today = dateIn(pen.book.timeZone, pen.now);
    if (lines.some(({ takenOn }) => takenOn > today)) return err({ code: 'received-in-the-future', field: 'takenOn' });
    if (new Set(lines.map(({ takenOn }) => takenOn)).size < lines.length) {
      return err({ code: 'outside-range', field: 'lines' });
    }
    if (lines.some((line) => !isPossible(line))) return err({ code: 'outside-range', field: 'humidity' });
    const days = lines.map(({ takenOn }) => takenOn).sort();
    const there = await pen.tx.roomLog.findMany({
      where: {
        placeId: place.id,
        takenOn: { gte: days[0] ?? today, lte: days.at(-1) ?? today },
        entry: { reversedBy: null },
      },
      orderBy: { id: 'asc' },
      select: { takenOn: true, tenthsC: true, humidityTenths: true },
    });
    const known = new Map(there.map((line) => [line.takenOn, keyOf(line)]));
    const fresh = lines.filter((line) => known.get(line.takenOn) !== keyOf(line));
    if (fresh.length === 0) return err({ code: 'changes-nothing' });
    const answer = { kept: fresh.length, known: lines.length - fresh.length };
    const prefer = pen.book.units === 'imperial' ? 'imperial' : 'metric';
    const [first] = fresh;
    const why =
      first && fresh.length === 1
        ? `${printTemperature(tenthsCelsius(first.tenthsC), { prefer })}, ${first.humidityTenths / 10} % on ${first.takenOn}`
        : `${fresh.length} days, ${fresh.map(({ takenOn }) => takenOn).sort()[0]} to ${days.at(-1)}`;
    await pen.enter({ placeId: place.id, why }, answer);
    await pen.tx.roomLog.createMany({
      data: fresh.map(({ takenOn, tenthsC, humidityTenths }) => ({
        placeId: place.id,
        entryId: pen.entryId,
        takenOn,
        tenthsC,
        humidityTenths,
      })),
    });
    return ok(answer);
  });

const keyOf = ({ takenOn, tenthsC, humidityTenths }: { takenOn: string; tenthsC: number; humidityTenths: number }) =>
  `${takenOn} ${tenthsC} ${humidityTenths}`;

/** Air that wood settles in: what the equation of its moisture holds for. */
export function isPossible({ tenthsC, humidityTenths }: Pick<AirOfDay, 'tenthsC' | 'humidityTenths'>): boolean {
  return (
    Number.isInteger(tenthsC) &&
    Number.isInteger(humidityTenths) &&
    tenthsC <= WARMEST_TENTHS &&
    tenthsC <= HOTTEST_TENTHS &&
    equilibriumMoisture({ scale: 'C', degrees: tenthsC / 10 }, humidityTenths / 10).ok
  );
}
