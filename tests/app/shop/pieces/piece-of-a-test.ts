import type { FiguredPiece } from '@/app/(shop)/pieces/figured-piece';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { nanometres } from '@/shared/units/nanometres';
import { speciesById } from '@/shared/wood/all-species';
import type { MoistureReading } from '@/shared/wood/moisture-reading';
import type { Species } from '@/shared/wood/species';

export const mm = (size: number) => nanometres(Math.round(size * 1_000_000));
export const day = (text: string) => text as CalendarDate;

export function wood(id: string): Species {
  const species = speciesById(id);
  if (!species) throw new Error(`No species ${id}`);
  return species;
}

export const reading = (on: string, rawTenths: number, more: Partial<MoistureReading> = {}): MoistureReading => ({
  on: day(on),
  rawTenths,
  meter: 'pin',
  ...more,
});

/** A slab of 2 m, 500 mm wide and 60 mm thick: 1 m² and 0.06 m³. */
export function slab(more: Partial<FiguredPiece> = {}): FiguredPiece {
  return {
    form: 'slab',
    wood: 'Walnut',
    soldAs: 8,
    measured: null,
    size: { length: mm(2000), start: mm(500), middle: mm(500), end: mm(500), thickness: mm(60) },
    readings: [],
    place: 'Slab rack A',
    placeLabel: 'P123456',
    label: 'S234567',
    sawn: '',
    warp: { cup: null, bow: null, twist: null },
    ...more,
  };
}
