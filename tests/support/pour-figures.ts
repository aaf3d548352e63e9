import type { PourFigures } from '@/app/_server/pours/kept-plan';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import { nanometres } from '@/shared/units/nanometres';
import { microlitres, milligrams } from '@/shared/units/stock-unit';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';

export const mm = (length: number) => nanometres(Math.round(length * 1e6));
export const g = (grams: number) => milligrams(Math.round(grams * 1000));

/** A deep-pour resin: 100 to 45, up to 50 mm a lift, poured again from 12 to 24 hours. */
export const FACTS: Omit<ResinSheet, 'from'> = {
  byMass: { a: 100, b: 45 },
  byVolume: { a: 2, b: 1 },
  densityA: 1100,
  densityB: 1000,
  toleranceTenths: 20,
  depths: [{ least: mm(6), most: mm(50), upTo: tenthsCelsius(250) }],
  potLives: [
    { minutes: 75, mass: g(100), at: tenthsCelsius(230) },
    { minutes: 60, mass: g(10_000), at: tenthsCelsius(230) },
  ],
  againFromHours: 12,
  againToHours: 24,
  demouldHours: 72,
  fullCureDays: 7,
};

/** A box of 500 × 100 × 60 mm, three litres in two lifts of 30 mm, sealed, one bucket of 10 kg, on a scale of 1 g. */
export const FIGURES: PourFigures = {
  space: {
    from: 'solid',
    solid: { shape: 'box', length: mm(500), width: mm(100), depth: mm(60) },
    wood: microlitres(0),
  },
  sealArea: 0,
  sealPerSquareMetre: microlitres(200_000),
  leakagePercent: 0,
  lossPerBatch: microlitres(0),
  room: tenthsCelsius(210),
  bucket: g(10_000),
  minutesPerKilogram: 5,
  step: g(1),
};
