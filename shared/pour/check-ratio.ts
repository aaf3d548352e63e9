import type { Parts, ResinSheet } from '@/shared/pour/resin-sheet';
import { err, ok, type Result } from '@/shared/result/result';

/** The ratio to weigh by, and how it was come by. */
export type MassRatio = {
  readonly parts: Parts;
  readonly from: 'sheet' | 'volume-and-densities';
  /** How far the sheet's own two ratios are apart, tenths of a per cent of part B; undefined where only one can be had. */
  readonly apartTenths?: number;
};

export type RatioError =
  | { readonly code: 'no-ratio' | 'no-densities' }
  | { readonly code: 'bad-ratio'; readonly by: 'mass' | 'volume' }
  /** Ratios by mass and by volume do not agree with the densities. */
  | {
      readonly code: 'ratios-contradict';
      readonly apartTenths: number;
      readonly byMass: number;
      readonly fromVolume: number;
    };

/** Sheets print rounded ratios and densities: within this they agree. Common practice. */
const AGREES_TENTHS = 30;

/**
 * The ratio by mass, and whether what the sheet says of it holds together: parts by volume times densities are parts by
 * mass. Two ratios that are more than 3 % of part B apart contradict each other, and nothing is weighed until one is put
 * right. Fails also where there is none, or one by volume without both densities. 2 to 1 by volume at 1100 and 1000 g/L
 * is 2200 to 1000, that is 100 to 45.45 by mass: a sheet that says 100 to 45 agrees to 1 %.
 */
export function massRatio(
  sheet: Pick<ResinSheet, 'byMass' | 'byVolume' | 'densityA' | 'densityB'>,
): Result<MassRatio, RatioError> {
  const { byMass, byVolume, densityA, densityB } = sheet;
  if (byMass && !isRatio(byMass)) return err({ code: 'bad-ratio', by: 'mass' });
  if (byVolume && !isRatio(byVolume)) return err({ code: 'bad-ratio', by: 'volume' });
  const computed =
    byVolume && densityA && densityB ? { a: byVolume.a * densityA, b: byVolume.b * densityB } : undefined;
  if (!byMass) {
    if (!byVolume) return err({ code: 'no-ratio' });
    return computed ? ok({ parts: computed, from: 'volume-and-densities' }) : err({ code: 'no-densities' });
  }
  if (!computed) return ok({ parts: byMass, from: 'sheet' });
  const [said, reckoned] = [(100 * byMass.b) / byMass.a, (100 * computed.b) / computed.a];
  const apartTenths = Math.round((Math.abs(said - reckoned) / said) * 1000);
  if (apartTenths > AGREES_TENTHS) {
    return err({ code: 'ratios-contradict', apartTenths, byMass: said, fromVolume: reckoned });
  }
  return ok({ parts: byMass, from: 'sheet', apartTenths });
}

const isRatio = ({ a, b }: Parts) => [a, b].every((part) => Number.isFinite(part) && part > 0);
