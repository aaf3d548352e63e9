import { airOf } from '@/app/_server/climate/air-of';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import { dryingSeries } from '@/shared/wood/drying-series';
import { type DryingForecast, forecastDrying } from '@/shared/wood/forecast-drying';
import { speciesMeant } from '@/shared/wood/species-meant';

/** When a piece will be dry enough, as its own readings and the air it stands in say, or why that is not known. */
export type DryBy =
  | {
      readonly known: true;
      readonly reached: boolean;
      /** Whether that is forecast; else it is what it read last. */
      readonly isForecast: boolean;
      readonly dates: DryingForecast['dates'];
      readonly daysLate: number;
    }
  | { readonly known: false; readonly because: 'no-readings' | 'no-air' | 'room-too-damp' | 'too-few' };

/** The EMC of the rooms that pieces stand in, each asked for once. */
export async function emcByPlace(
  book: OpenBook,
  lines: readonly PieceLine[],
  today: CalendarDate,
): Promise<ReadonlyMap<string, number>> {
  const labels = [...new Set(lines.flatMap(({ placeLabel }) => placeLabel ?? []))];
  const places = await book.read.place.findMany({
    where: { label: { in: labels } },
    select: { id: true, label: true },
  });
  const known = new Map<string, number>();
  for (const { id, label } of places) {
    const air = await airOf(book, id, today);
    if (air) known.set(label, air.emc.value.mc);
  }
  return known;
}

/** Late days below zero are days to spare. The likely date is the middle of the belief; beyond ten years it is never. */
export function dryBy(
  line: PieceLine,
  emc: number | undefined,
  { targetTenths, by }: { readonly targetTenths: number; readonly by: CalendarDate },
): DryBy {
  const points = dryingSeries(
    line.readings.map((reading) => ({
      on: reading.takenOn,
      rawTenths: reading.mcTenths,
      meter: reading.meterKind || 'unknown',
      ...(reading.correctedTenths !== null && { correctedTenths: reading.correctedTenths }),
      ...(reading.depthNm !== null && { depth: reading.depthNm }),
      ...(reading.alongNm !== null && { along: reading.alongNm }),
    })),
  );
  const last = points.at(-1);
  if (!last) return { known: false, because: 'no-readings' };
  // Dry already is dry, whatever the air.
  if (last.mcTenths <= targetTenths) {
    const on = last.on;
    return {
      known: true,
      reached: true,
      isForecast: false,
      dates: { earliest: on, likely: on, latest: on },
      daysLate: daysBetween(by, on),
    };
  }
  if (emc === undefined) return { known: false, because: 'no-air' };
  const [species, other] = speciesMeant(line.species).exact;
  const forecast = forecastDrying({
    points,
    targetTenths,
    emc,
    speciesId: species && !other ? species.id : null,
    thickness: line.thicknessNm,
  });
  if (!forecast.ok) {
    return { known: false, because: forecast.error.code === 'room-too-damp' ? 'room-too-damp' : 'too-few' };
  }
  const { dates, reached } = forecast.value.value;
  return {
    known: true,
    reached,
    isForecast: true,
    dates,
    daysLate: dates.likely === null ? Infinity : daysBetween(by, dates.likely),
  };
}
