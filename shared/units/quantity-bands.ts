import { dividedBy, type Ratio, ratio } from '@/shared/units/ratio';
import { type StockMeasureName, stockMeasure } from '@/shared/units/stock-measures';
import type { StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** Amounts below `most` steps are shown in steps of 1/`per` of a unit. */
export type Band = {
  readonly unit: StockMeasureName;
  readonly step: Ratio;
  readonly per: bigint;
  readonly most: bigint;
  /** Whole pounds stand before the ounces. */
  readonly poundsFirst: boolean;
};

const ENDLESS = 10n ** 18n;

function band(unit: StockMeasureName, per: bigint, below: bigint | undefined, poundsFirst = false): Band {
  const most = below === undefined ? ENDLESS : below * per;
  return { unit, step: dividedBy(stockMeasure(unit).size, ratio(per)), per, most, poundsFirst };
}

const METRIC_MASS = [
  band('g', 1000n, 1n),
  band('g', 10n, 100n),
  band('g', 1n, 1000n),
  band('kg', 100n, 100n),
  band('kg', 10n, undefined),
];
const METRIC_VOLUME = [
  band('mL', 1000n, 1n),
  band('mL', 10n, 100n),
  band('mL', 1n, 1000n),
  band('L', 100n, 100n),
  band('L', 10n, undefined),
];
const US_MASS = [band('oz', 100n, 1n), band('oz', 10n, 16n), band('oz', 10n, 320n, true), band('lb', 10n, undefined)];
const US_VOLUME = [
  band('fl oz', 100n, 1n),
  band('fl oz', 10n, 32n),
  band('qt', 100n, 4n),
  band('gal', 100n, 100n),
  band('gal', 10n, undefined),
];
const COUNT = [band('piece', 1n, undefined)];

/**
 * The scale of steps that an amount is shown in, small to large; in each, the number has no more figures than a
 * workshop scale or a jug can tell apart. `bandsFor('mg', 'metric')` runs from milligrams below a gram to 100 g above
 * 100 kg.
 */
export function bandsFor(unit: StockUnit, prefer: UnitSystem): readonly Band[] {
  if (unit === 'piece') return COUNT;
  if (unit === 'mg') return prefer === 'metric' ? METRIC_MASS : US_MASS;
  return prefer === 'metric' ? METRIC_VOLUME : US_VOLUME;
}
