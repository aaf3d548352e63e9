import { type Ratio, ratio } from '@/shared/units/ratio';
import type { StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A unit people write stock in: what it counts, and its exact size in the small unit of that. */
export type StockMeasure = {
  readonly name: string;
  readonly unit: StockUnit;
  readonly system: UnitSystem;
  readonly size: Ratio;
  /** Lower case, without dots and spaces. */
  readonly spellings: readonly string[];
};

// International yard and pound agreement (1959): 1 lb = 0.453 592 37 kg and 1 in = 25.4 mm, exactly, so a cubic inch is
// 16.387 064 mL; the US liquid gallon is 231 of them (NIST Handbook 44, Appendix C).
const MG_IN_100_POUNDS = 45_359_237n;
const UL_IN_1000_GALLONS = 231n * 16_387_064n;

/**
 * Every unit that stock may be written in. Capitals do not matter: `Mg` is read as milligrams, no tin holds a megagram.
 */
const STOCK_MEASURES = [
  mass('mg', 'metric', ratio(1n), ['mg', 'milligram', 'milligrams']),
  mass('g', 'metric', ratio(1_000n), ['g', 'gram', 'grams', 'gramme', 'grammes']),
  mass('kg', 'metric', ratio(1_000_000n), ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms']),
  mass('oz', 'imperial', ratio(MG_IN_100_POUNDS, 1_600n), ['oz', 'ounce', 'ounces']),
  mass('lb', 'imperial', ratio(MG_IN_100_POUNDS, 100n), ['lb', 'lbs', 'pound', 'pounds']),
  volume('uL', 'metric', ratio(1n), ['ul', 'microlitre', 'microlitres', 'microliter', 'microliters']),
  volume('mL', 'metric', ratio(1_000n), ['ml', 'cc', 'millilitre', 'millilitres', 'milliliter', 'milliliters']),
  volume('cL', 'metric', ratio(10_000n), ['cl', 'centilitre', 'centilitres', 'centiliter', 'centiliters']),
  volume('L', 'metric', ratio(1_000_000n), ['l', 'litre', 'litres', 'liter', 'liters']),
  volume('fl oz', 'imperial', ratio(UL_IN_1000_GALLONS, 128_000n), [
    'floz',
    'flounce',
    'flounces',
    'fluidoz',
    'fluidounce',
    'fluidounces',
  ]),
  volume('pt', 'imperial', ratio(UL_IN_1000_GALLONS, 8_000n), ['pt', 'pts', 'pint', 'pints']),
  volume('qt', 'imperial', ratio(UL_IN_1000_GALLONS, 4_000n), ['qt', 'qts', 'quart', 'quarts']),
  volume('gal', 'imperial', ratio(UL_IN_1000_GALLONS, 1_000n), ['gal', 'gals', 'gallon', 'gallons']),
  {
    name: 'piece',
    unit: 'piece',
    system: 'metric',
    size: ratio(1n),
    spellings: ['piece', 'pieces', 'pc', 'pcs', 'ea', 'each'],
  },
] as const satisfies readonly StockMeasure[];

/** The name of a unit that a bare number may be taken in: `kg`, `mL`, `fl oz`, … */
export type StockMeasureName = (typeof STOCK_MEASURES)[number]['name'];

function mass<const Name extends string>(name: Name, system: UnitSystem, size: Ratio, spellings: readonly string[]) {
  return { name, unit: 'mg', system, size, spellings } as const;
}

function volume<const Name extends string>(name: Name, system: UnitSystem, size: Ratio, spellings: readonly string[]) {
  return { name, unit: 'uL', system, size, spellings } as const;
}

/** The measure of that name. `stockMeasure('lb').size` is 453592.37 mg. */
export function stockMeasure(name: StockMeasureName): StockMeasure {
  const found = STOCK_MEASURES.find((measure) => measure.name === name);
  if (!found) throw new Error(`No stock measure is named ${name}`);
  return found;
}

/**
 * The measure spelled so, in lower case without dots and spaces; undefined for an unknown spelling. `floz` is fl oz.
 */
export function stockMeasureSpelled(spelling: string): StockMeasure | undefined {
  return STOCK_MEASURES.find((measure: StockMeasure) => measure.spellings.includes(spelling));
}
