import { daysBetween } from '@/shared/calendar/days-between';
import type { DryingPoint } from '@/shared/wood/drying-series';

/** One way the piece may be drying, with its share of belief: rate per day, EMC, and MC on the day of the last reading. */
export type DryingCase = {
  readonly rate: number;
  readonly emc: number;
  readonly mcNow: number;
  readonly weight: number;
};

export type RateBelief = { readonly meanLnRate: number; readonly deviation: number };
export type EmcBelief = { readonly mean: number; readonly deviation: number };

const RATES = 101;
const RATE_REACH = 4;
/** Five-point Gauss–Hermite rule for a normal, and seven equal slices of a normal by their middles. */
const EMC_NODES: readonly (readonly [number, number])[] = [
  [-2.856970013872806, 0.011257411327720693],
  [-1.355626179974266, 0.22207592200561263],
  [0, 0.5333333333333333],
  [1.355626179974266, 0.22207592200561263],
  [2.856970013872806, 0.011257411327720693],
];
const SLICES = [-1.4652, -0.7916, -0.3661, 0, 0.3661, 0.7916, 1.4652];

/** Rates that would have dried the piece e^50 times over are as good as any of their like, and would overflow. */
const MOST_GROWTH = 50;

/** How far off a reading may be, points of MC: at least 0.7, and more in wet wood. Common practice. */
export function readingDeviation(mc: number): number {
  return Math.max(0.7, 0.06 * mc);
}

/**
 * Every way the piece may be drying, weighed by its readings: a grid of 101 rates across ±4 deviations of the prior and
 * five values of EMC; for each the MC on the last day follows from all readings by weighted least squares, exactly,
 * because the curve is a straight line in it. Readings are independent and normal, each off by `readingDeviation`. The
 * weights add up to 1. Deterministic: nothing is drawn at random. Needs one point at least.
 */
export function dryingBelief(
  points: readonly DryingPoint[],
  rates: RateBelief,
  emcs: EmcBelief,
): readonly DryingCase[] {
  const last = points.at(-1);
  if (!last) throw new RangeError('A belief needs a reading');
  const data = points.map(({ on, mcTenths }) => {
    const mc = mcTenths / 10;
    return { days: daysBetween(on, last.on), mc, trust: 1 / readingDeviation(mc) ** 2 };
  });
  const weighed: { rate: number; emc: number; above: number; deviation: number; lnWeight: number }[] = [];
  for (let step = 0; step < RATES; step++) {
    const z = RATE_REACH * ((2 * step) / (RATES - 1) - 1);
    const rate = Math.exp(rates.meanLnRate + z * rates.deviation);
    for (const [node, share] of EMC_NODES) {
      const emc = emcs.mean + node * emcs.deviation;
      // Days before the last reading the piece stood e^(k days) times as far above the EMC.
      let sumSquares = 0;
      let sumProducts = 0;
      let sumData = 0;
      for (const { days, mc, trust } of data) {
        const grown = Math.exp(Math.min(rate * days, MOST_GROWTH));
        sumSquares += trust * grown * grown;
        sumProducts += trust * grown * (mc - emc);
        sumData += trust * (mc - emc) ** 2;
      }
      const above = sumProducts / sumSquares;
      const misfit = sumData - sumProducts * above;
      // The prior on the MC of the first day is flat; on the last day it is flat times the growth since.
      const lnFlat = Math.min(rate * (data[0]?.days ?? 0), MOST_GROWTH) - Math.log(sumSquares) / 2;
      weighed.push({
        rate,
        emc,
        above,
        deviation: 1 / Math.sqrt(sumSquares),
        lnWeight: -misfit / 2 + lnFlat - (z * z) / 2 + Math.log(share),
      });
    }
  }
  const highest = Math.max(...weighed.map(({ lnWeight }) => lnWeight));
  const cases = weighed
    .map((each) => ({ ...each, weight: Math.exp(each.lnWeight - highest) }))
    .filter(({ weight }) => weight > 1e-9);
  const whole = cases.reduce((sum, { weight }) => sum + weight, 0) * SLICES.length;
  return cases.flatMap(({ rate, emc, above, deviation, weight }) =>
    SLICES.map((slice) => ({ rate, emc, mcNow: emc + above + slice * deviation, weight: weight / whole })),
  );
}
