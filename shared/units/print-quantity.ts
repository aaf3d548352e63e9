import { decimalText } from '@/shared/units/decimal-text';
import { type Band, bandsFor } from '@/shared/units/quantity-bands';
import { dividedBy, ratio, times } from '@/shared/units/ratio';
import { roundDown, roundHalfAwayFromZero, roundUp } from '@/shared/units/round-ratio';
import type { AmountOf, StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

export type QuantityPrinting = {
  readonly prefer: UnitSystem;
  /**
   * `nearest` (the default) is off by half the last figure at most. `down` never shows more than there is, for stock on
   * hand; `up` never shows less than is wanted, for what must be bought.
   */
  readonly rounding?: 'nearest' | 'down' | 'up';
};

/**
 * A stock quantity as a maker reads it: `750 g`, `1.84 kg`, `1.2 L`, `12 oz`, `4 lb 0.9 oz`, `16 fl oz`, `1.5 gal`, `3
 * pieces`. Steps: metric 1 mg below 1 g, 0.1 g below 100 g, 1 g below 1 kg, 10 g below 100 kg, then 100 g, and the same
 * for litres; US 0.01 oz below 1 oz, 0.1 oz below 20 lb, then 0.1 lb; 0.01 fl oz below 1 fl oz, 0.1 fl oz below a
 * quart, 0.01 qt below a gallon, 0.01 gal below 100 gal, then 0.1 gal. What shows is read back by `parseQuantity` as
 * the same shown amount (up to the container limit). An amount that is not zero never shows as zero; one too small for
 * the US steps is shown metric. For the whole amount to the last small unit use `printQuantityExact`.
 * `printQuantity(milligrams(1_840_250), 'mg', { prefer: 'metric' })` is `1.84 kg`.
 */
export function printQuantity<U extends StockUnit>(
  amount: AmountOf<U>,
  unit: U,
  { prefer, rounding = 'nearest' }: QuantityPrinting,
): string {
  const signed = BigInt(amount);
  const below = signed < 0n;
  // Down and up are about the quantity, so below zero they change places with its size.
  const way = !below || rounding === 'nearest' ? rounding : rounding === 'down' ? 'up' : 'down';
  const size = below ? -signed : signed;
  for (const band of bandsFor(unit, prefer)) {
    const steps = stepsIn(size, band, way);
    if (steps >= band.most) continue;
    if (steps === 0n && size > 0n) return printQuantity(amount, unit, { prefer: 'metric', rounding });
    return `${below ? '−' : ''}${inBand(steps, band)}`;
  }
  throw new RangeError(`No way to show ${amount} ${unit}`);
}

function stepsIn(size: bigint, { step }: Band, rounding: 'nearest' | 'down' | 'up'): bigint {
  const exact = dividedBy(ratio(size), step);
  if (rounding === 'nearest') return roundHalfAwayFromZero(exact);
  // The book holds a pint as 473176 µL though it is 473176.473: that is a full pint, both ways of rounding.
  const inTheBook = (steps: bigint) => roundHalfAwayFromZero(times(ratio(steps), step));
  if (rounding === 'down') {
    const steps = roundDown(exact);
    return inTheBook(steps + 1n) <= size ? steps + 1n : steps;
  }
  const steps = roundUp(exact);
  return steps > 0n && inTheBook(steps - 1n) >= size ? steps - 1n : steps;
}

function inBand(steps: bigint, { unit, per, poundsFirst }: Band): string {
  const digits = String(per).length - 1;
  if (unit === 'piece') return `${decimalText(steps, 0, 'grouped')} ${steps === 1n ? 'piece' : 'pieces'}`;
  if (!poundsFirst) return `${decimalText(steps, digits)} ${unit}`;
  const inAPound = 16n * per;
  const ounces = steps % inAPound;
  return `${steps / inAPound} lb${ounces ? ` ${decimalText(ounces, digits)} oz` : ''}`;
}
