import type { MeterKind } from '@/shared/wood/moisture-reading';

export type MeterRange = {
  /** Tenths of a per cent between which the meter can be read at all, ends included. */
  readonly from: number;
  readonly to: number;
  /** Above this a reading is only a hint. */
  readonly sureTo: number;
};

/**
 * What a kind of meter can say: pins about 6 to 30 %, pinless 4 to 30 % (Wood Handbook, Chapter 13), both only a hint
 * above 25 % (extension publications and makers' bulletins name 25 to 30 %); an oven test has no limit, and an unknown
 * meter is trusted like pins. `meterRange('pin').from` is 60.
 */
export function meterRange(meter: MeterKind): MeterRange {
  if (meter === 'oven') return { from: 0, to: 2500, sureTo: 2500 };
  return { from: meter === 'pinless' ? 40 : 60, to: 300, sureTo: 250 };
}
