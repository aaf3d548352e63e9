import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { type MoistureReading, takenAs } from '@/shared/wood/moisture-reading';

/** The wettest figure of a day, tenths of a per cent. */
export type DryingPoint = { readonly on: CalendarDate; readonly mcTenths: number };

/**
 * The wettest figure of each day a piece was read, oldest first: what *steady* and the forecast are made from, because
 * the wettest place is the last to be ready. Two readings of one day give one point.
 */
export function dryingSeries(readings: readonly MoistureReading[]): readonly DryingPoint[] {
  const byDay = new Map<CalendarDate, number>();
  for (const each of readings) byDay.set(each.on, Math.max(takenAs(each), byDay.get(each.on) ?? 0));
  return [...byDay].map(([on, mcTenths]) => ({ on, mcTenths })).sort((a, b) => (a.on < b.on ? -1 : 1));
}
