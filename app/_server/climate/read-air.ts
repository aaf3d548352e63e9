import type { OpenBook } from '@/prisma/open-book';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { type AirDay, type AirSeason, usualAir } from '@/shared/wood/room-air';

/** The air the book knows of a place: its own, or that of the place it is in. */
export type AirOfPlace = {
  /** The place it was written for. */
  of: { id: number; label: string; name: string };
  inherited: boolean;
  /** Each day it was noted, oldest first, of the last four hundred days. Of a day noted twice the later note counts. */
  days: readonly AirDay[];
  seasons: readonly (AirSeason & { id: number })[];
};

/** Days of the log that are drawn and reckoned with: a year and a little. */
const DAYS_READ = 400;
/** A place inside a place inside a place: deeper than any shop. */
const MOST_DEEP = 20;

/**
 * The air of a place; where its own says nothing of today, that of the nearest place around it that does; where none does,
 * whatever the nearest one kept. Undefined where none kept any.
 */
export async function airOfPlace(
  book: OpenBook,
  where: { id: number } | { label: string },
  today: CalendarDate,
): Promise<AirOfPlace | undefined> {
  const select = {
    id: true,
    label: true,
    name: true,
    parentId: true,
    climate: {
      where: { takenOn: { gte: addDays(today, -DAYS_READ) }, entry: { reversedBy: null } },
      select: { takenOn: true, tenthsC: true, humidityTenths: true },
      orderBy: { id: 'asc' },
    },
    seasons: {
      where: { removedById: null },
      select: { id: true, name: true, fromMonth: true, tenthsC: true, humidityTenths: true },
      orderBy: { fromMonth: 'asc' },
    },
  } as const;
  let place = await book.read.place.findUnique({ where: 'id' in where ? { id: where.id } : where, select });
  let kept: AirOfPlace | undefined;
  for (let deep = 0; place && deep < MOST_DEEP; deep += 1) {
    const { id, label, name, parentId, climate, seasons } = place;
    if (climate.length + seasons.length > 0) {
      const noted = new Map(climate.map(({ takenOn, ...air }) => [takenOn, { ...air, on: takenOn as CalendarDate }]));
      const days = [...noted.values()].sort((a, b) => (a.on < b.on ? -1 : 1));
      const found = { of: { id, label, name }, inherited: deep > 0, days, seasons };
      if (usualAir(found, today)) return found;
      kept ??= found;
    }
    place = parentId === null ? null : await book.read.place.findUnique({ where: { id: parentId }, select });
  }
  return kept;
}
