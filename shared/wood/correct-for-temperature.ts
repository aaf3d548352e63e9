import { err, ok, type Result } from '@/shared/result/result';
import { type TenthsCelsius, tenthsCelsius } from '@/shared/units/tenths-celsius';
import { type Explained, explained } from '@/shared/wood/explained';
import type { MeterKind } from '@/shared/wood/moisture-reading';

export type TemperatureCorrection = {
  readonly rawTenths: number;
  readonly correctedTenths: number;
  /** Added to the raw figure, tenths of a per cent; below zero in warm wood. */
  readonly addedTenths: number;
};

export type TemperatureCorrectionError =
  | { readonly code: 'only-for-pin-meters' }
  /** The rule of thumb was not made for wood this cold or hot: use the meter maker’s table. */
  | { readonly code: 'wood-temperature-out-of-range'; readonly least: TenthsCelsius; readonly most: TenthsCelsius };

/** Pin meters are commonly calibrated at 70 °F (21.1 °C). */
export const USUAL_CALIBRATION = tenthsCelsius(211);
/** 0.5 point per 10 °F, in tenths of a per cent per tenth of a degree Celsius: 5 / (100/1.8). */
const TENTHS_PER_TENTH_DEGREE = 0.09;
const LEAST = tenthsCelsius(-180);
const MOST = tenthsCelsius(490);

/**
 * A pin meter's reading corrected for the temperature of the wood: add half a point for every 10 °F (5.6 °C) the wood is
 * colder than the temperature the meter is calibrated at, take away when it is hotter; to the nearest tenth, never below
 * zero. Bulletins disagree about the size of it, so the raw figure comes back beside the corrected one and is what should
 * be kept. Wood −18 to 49 °C, both allowed. A meter that corrects by itself must not be corrected again. Wood Handbook,
 * Chapter 13. A raw 12.0 % in wood of 10 °C is 13.0 %.
 */
export function correctForTemperature(
  rawTenths: number,
  wood: TenthsCelsius,
  meter: MeterKind,
  calibration: TenthsCelsius = USUAL_CALIBRATION,
): Result<Explained<TemperatureCorrection>, TemperatureCorrectionError> {
  if (meter !== 'pin') return err({ code: 'only-for-pin-meters' });
  if (wood < LEAST || wood > MOST) return err({ code: 'wood-temperature-out-of-range', least: LEAST, most: MOST });
  const wanted = Math.round((calibration - wood) * TENTHS_PER_TENTH_DEGREE);
  const correctedTenths = Math.max(0, rawTenths + wanted);
  return ok(
    explained({ rawTenths, correctedTenths, addedTenths: correctedTenths - rawTenths }, 'meter-temperature', {
      rawPercent: rawTenths / 10,
      woodC: wood / 10,
      calibrationC: calibration / 10,
    }),
  );
}
