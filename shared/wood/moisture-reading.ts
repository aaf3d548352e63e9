import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Nanometres } from '@/shared/units/nanometres';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

export const METER_KINDS = ['pin', 'pinless', 'oven', 'unknown'] as const;
export type MeterKind = (typeof METER_KINDS)[number];

/** One reading as it was taken. What was not noted is left out; the raw figure is never overwritten. */
export type MoistureReading = {
  readonly on: CalendarDate;
  /** What the meter showed, tenths of a per cent of the dry weight. */
  readonly rawTenths: number;
  /** What it is taken as, after a correction; the raw figure when left out. */
  readonly correctedTenths?: number;
  /** Below the face: the tips of insulated pins, or how deep a pinless meter looks. */
  readonly depth?: Nanometres;
  /** Along the piece from its first end, and across it from its left edge. */
  readonly along?: Nanometres;
  readonly across?: Nanometres;
  readonly meter: MeterKind;
  /** The species the meter was set to. */
  readonly speciesSetting?: string;
  readonly woodTemperature?: TenthsCelsius;
};

/** The figure a reading is taken as: corrected where it was, else raw. */
export function takenAs(reading: MoistureReading): number {
  return reading.correctedTenths ?? reading.rawTenths;
}
