import type { UnitSystem } from '@/shared/units/unit-system';

/** A unit people write lengths in, with its exact size in nanometres. */
export type LengthMeasure = {
  readonly name: 'mm' | 'cm' | 'm' | 'in' | 'ft' | 'yd';
  readonly system: UnitSystem;
  readonly size: bigint;
  /** Lower case, without dots and spaces. */
  readonly spellings: readonly string[];
};

// International yard and pound agreement (1959): 1 yd = 0.9144 m exactly, so 1 ft = 304.8 mm and 1 in = 25.4 mm.
const MILLIMETRE = 1_000_000n;
const INCH = 25_400_000n;

/** Every unit that a length may be written in. */
const LENGTH_MEASURES: readonly LengthMeasure[] = [
  { name: 'mm', system: 'metric', size: MILLIMETRE, spellings: words('mm', 'millimetre', 'millimeter') },
  { name: 'cm', system: 'metric', size: 10n * MILLIMETRE, spellings: words('cm', 'centimetre', 'centimeter') },
  { name: 'm', system: 'metric', size: 1000n * MILLIMETRE, spellings: words('m', 'metre', 'meter') },
  { name: 'in', system: 'imperial', size: INCH, spellings: ['"', "''", 'in', 'ins', 'inch', 'inches'] },
  { name: 'ft', system: 'imperial', size: 12n * INCH, spellings: ["'", 'ft', 'foot', 'feet'] },
  { name: 'yd', system: 'imperial', size: 36n * INCH, spellings: words('yd', 'yard') },
];

function words(...singular: readonly string[]): readonly string[] {
  return singular.flatMap((word) => (word === 'm' || word === 'mm' || word === 'cm' ? [word] : [word, `${word}s`]));
}

/** The measure of that name. `lengthMeasure('in').size` is 25 400 000 nm. */
export function lengthMeasure(name: LengthMeasure['name']): LengthMeasure {
  const found = LENGTH_MEASURES.find((measure) => measure.name === name);
  if (!found) throw new Error(`No length measure is named ${name}`);
  return found;
}

/** The measure spelled so, in lower case without dots and spaces; undefined for an unknown spelling. `"` is an inch. */
export function lengthMeasureSpelled(spelling: string): LengthMeasure | undefined {
  return LENGTH_MEASURES.find((measure) => measure.spellings.includes(spelling));
}
