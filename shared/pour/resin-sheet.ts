import type { Nanometres } from '@/shared/units/nanometres';
import type { Milligrams } from '@/shared/units/stock-unit';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

/** Parts of A to parts of B, whole numbers with no unit: 100 to 45 is `{ a: 100, b: 45 }`. */
export type Parts = { readonly a: number; readonly b: number };

/** How deep one lift may be, up to a room temperature and a mass of mixed resin where the sheet draws them in. */
export type LiftDepth = {
  readonly least: Nanometres;
  readonly most: Nanometres;
  readonly upTo?: TenthsCelsius | undefined;
  readonly mostMass?: Milligrams | undefined;
};

/**
 * How long a mass of mixed resin stays workable at a temperature: one row of the sheet, as a rule for 100 g at 23 to 25 °C.
 */
export type PotLife = { readonly minutes: number; readonly mass: Milligrams; readonly at: TenthsCelsius };

/**
 * What a maker's data sheet says of a resin system. Whatever it does not say is left out, never guessed. `from` says
 * whether the numbers stand on a sheet or were typed in without one.
 */
export type ResinSheet = {
  readonly from: 'sheet' | 'typed';
  readonly byMass?: Parts | undefined;
  readonly byVolume?: Parts | undefined;
  /** Grams per litre. */
  readonly densityA?: number | undefined;
  readonly densityB?: number | undefined;
  readonly mixedDensity?: number | undefined;
  /** How far the weighed ratio may be off, in tenths of a per cent of part B. */
  readonly toleranceTenths?: number | undefined;
  readonly depths: readonly LiftDepth[];
  /** One row for each mass and temperature it was measured at. */
  readonly potLives?: readonly PotLife[] | undefined;
  /** Pour again while it is tacky: hours after the last lift, from and to. After that it is sanded first. */
  readonly againFromHours?: number | undefined;
  readonly againToHours?: number | undefined;
  readonly demouldHours?: number | undefined;
  readonly fullCureDays?: number | undefined;
  readonly leastRoom?: TenthsCelsius | undefined;
  readonly mostRoom?: TenthsCelsius | undefined;
  /** By volume, hundredths of a per cent. */
  readonly shrinkageHundredths?: number | undefined;
  /** The maker sells A and B as a set: both must carry the same lot. */
  readonly setsTogether?: boolean | undefined;
};
