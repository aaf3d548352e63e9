import { type MinorUnits, minorUnits } from '@/shared/units/minor-units';

/** Money of a need: what is known of it, and whether all of it is. */
export type Money = { readonly minor: MinorUnits; readonly known: boolean };

type Priced = { readonly cost?: MinorUnits | undefined };

/** What a need costs, in minor units of the book's money. */
export type NeedCost = {
  /** Actual cost of what is promised to it and of what is free for it. */
  readonly inHand: Money;
  /** What comes and what is to be bought, at what was last paid. */
  readonly toCome: Money;
  /** What would be lost or have to be paid again: promised stock that will be past its limit on the day, and what is short. */
  readonly atRisk: Money;
};

/**
 * The cost of a need: stock in hand at what was paid for it, the rest at what was last paid. A part whose price is not
 * known counts nothing and makes the sum `known: false`. At risk is what is promised and will not be good on the day
 * together with what is short.
 */
export function costOfNeed(need: {
  reserved: readonly Priced[];
  have: readonly Priced[];
  failing: readonly Priced[];
  /** At what was last paid; none where nothing was. */
  arriving: readonly Priced[];
  short: Priced | undefined;
}): NeedCost {
  const short = need.short ? [need.short] : [];
  return {
    inHand: sumOf([...need.reserved, ...need.have]),
    toCome: sumOf([...need.arriving, ...short]),
    atRisk: sumOf([...need.failing, ...short]),
  };
}

/** The sum of what is priced, and whether everything is. */
export function sumOf(parts: readonly Priced[]): Money {
  return {
    minor: minorUnits(parts.reduce((sum, { cost }) => sum + (cost ?? 0), 0)),
    known: parts.every(({ cost }) => cost !== undefined),
  };
}
