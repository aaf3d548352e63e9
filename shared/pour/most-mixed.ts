import { potLifeAt } from '@/shared/pour/pot-life-at';
import type { PotLife } from '@/shared/pour/resin-sheet';
import { type Milligrams, milligrams } from '@/shared/units/stock-unit';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

export type MostMixedAsk = {
  readonly room: TenthsCelsius;
  /** What a bucket takes. */
  readonly bucket: Milligrams;
  readonly minutesPerKilogram: number;
};

/**
 * The most that can be weighed, stirred and poured before it thickens: for each mass the sheet measured, as much of it as
 * can be handled in its minutes, rounded down to the gram; the largest of these. A bucket larger than any mass on the sheet
 * is bounded by the minutes of the largest: more than those allow is certainly too much, whether less is not is for the
 * maker to say (`batch-not-measured` of `cautionsOfLift`). How long a kilogram takes is the maker's own figure; 5 minutes
 * is common practice. The bucket where the sheet has no row. 30 minutes for 10 kg at 5 a kilogram is 6 kg.
 */
export function mostMixed(rows: readonly PotLife[] | undefined, ask: MostMixedAsk): Milligrams {
  const { room, bucket, minutesPerKilogram } = ask;
  if (!rows || rows.length === 0) return bucket;
  const largest = Math.max(...rows.map(({ mass }) => mass));
  const tried = [...rows.map(({ mass }) => Math.min(mass, bucket)), ...(bucket > largest ? [bucket] : [])];
  const handled = tried.map((mass) => {
    const { minutes } = potLifeAt(rows, { room, mass: milligrams(mass) }) ?? { minutes: 0 };
    return Math.min(mass, Math.floor((minutes / minutesPerKilogram) * 1000) * 1000);
  });
  return milligrams(Math.max(...handled));
}
