import type { Nanometres } from '@/shared/units/nanometres';
import { airDryingDays } from '@/shared/wood/air-drying-days';
import type { WoodSourceId } from '@/shared/wood/sources';

/** What is believed of the drying rate k (per day) before any reading: ln k is normal with this mean and deviation. */
export type DryingPrior = {
  readonly meanLnRate: number;
  readonly deviation: number;
  /** Days from 75 to 20 % at this thickness the mean stands for. */
  readonly daysTo20: number;
  readonly source: WoodSourceId;
};

const INCH = 25_400_000;
/** Lumber of the list goes from about 75 to 20 % in air that would bring it to about 12 %. Common practice. */
const GREEN = 75;
const OUTDOOR_EMC = 12;
/** Drying time grows with thickness to this power: 1 if only the surface held it up, 2 if only the inside did. */
const THICKNESS_POWER = 1.5;
const POWER_DEVIATION = 0.25;
/** The published range is read as the middle 80 % of a log-normal. */
const NORMAL_90 = 1.2815515655446004;
/** A piece is no pile: sawing, sap and heart, airflow. Common practice. */
const PIECE_DEVIATION = 0.35;

/**
 * The rate a piece is believed to dry at before it was read, from its thickness and the published air-drying days of its
 * species: the geometric mean of the range, stretched with thickness to the power 1.5 (±0.25), and as unsure as the range
 * is wide. The days are Technical Note 233 (1960), from memory; how they scale is common practice.
 * Sugar maple of 1 in takes about 100 days from 75 to 20 %.
 */
export function dryingPrior(speciesId: string | null, thickness: Nanometres): DryingPrior {
  if (!(thickness > 0)) throw new RangeError(`A piece has a thickness: ${thickness}`);
  const { least, most, source } = airDryingDays(speciesId);
  const lnInches = Math.log(thickness / INCH);
  const lnDays = (Math.log(least) + Math.log(most)) / 2 + THICKNESS_POWER * lnInches;
  const spread = (Math.log(most) - Math.log(least)) / (2 * NORMAL_90);
  return {
    meanLnRate: Math.log(Math.log((GREEN - OUTDOOR_EMC) / (20 - OUTDOOR_EMC))) - lnDays,
    deviation: Math.hypot(spread, PIECE_DEVIATION, POWER_DEVIATION * lnInches),
    daysTo20: Math.exp(lnDays),
    source,
  };
}
