import type { Refusal } from '@/app/_server/refusal';
import { err, ok, type Result } from '@/shared/result/result';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import { correctForTemperature } from '@/shared/wood/correct-for-temperature';
import type { MeterKind } from '@/shared/wood/moisture-reading';

/** What a reading is taken as; null where it stands as shown. */
export type CorrectedReading = { correctedTenths: number | null };

/** A reading corrected for the temperature of the wood, where that was noted, it was pins, and the meter did not do so itself. */
export function correctReading(
  mcTenths: number,
  { kind, woodTenthsC, correctsItself }: { kind: MeterKind; woodTenthsC: number | null; correctsItself?: boolean },
): Result<CorrectedReading, Refusal> {
  if (woodTenthsC === null || correctsItself || kind !== 'pin') return ok({ correctedTenths: null });
  const corrected = correctForTemperature(mcTenths, tenthsCelsius(woodTenthsC), kind);
  if (!corrected.ok) return err({ code: 'outside-range', field: 'woodTemperature' });
  const { correctedTenths, addedTenths } = corrected.value.value;
  return ok({ correctedTenths: addedTenths === 0 ? null : correctedTenths });
}
