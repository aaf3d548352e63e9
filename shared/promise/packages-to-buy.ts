import { type MinorUnits, minorUnits } from '@/shared/units/minor-units';

/** A size a material is sold in, and what was last paid for it. */
export type PackageOffer = { readonly size: number; readonly paid?: MinorUnits | undefined };

export type Packages = {
  /** Largest size first. */
  readonly packs: readonly { readonly size: number; readonly count: number }[];
  readonly amount: number;
  /** What they would cost at what was last paid; none where that is not known of every one of them. */
  readonly price?: MinorUnits | undefined;
};

/** Above this many of the smallest size, only what the largest size leaves over is tried out. */
const MOST_TRIED = 24;

/**
 * Which packages to buy so that at least an amount is there. Where the price of every size is known the cheapest; else, and
 * of two that cost the same, what leaves least over; then the fewest packages; then the larger ones. A large amount is
 * made up of the largest size first and only its end is tried out. Undefined where nothing is short or no size is known.
 * Amounts are whole small units.
 *
 * Example: 6.2 kg short, sold in 1 kg and 5 kg, no prices: 1 × 5 kg and 2 × 1 kg.
 */
export function packagesToBuy(short: number, offers: readonly PackageOffer[]): Packages | undefined {
  const sizes = [...new Map(offers.filter((each) => each.size > 0).map((each) => [each.size, each])).values()].sort(
    (a, b) => b.size - a.size,
  );
  const [largest] = sizes;
  const smallest = sizes.at(-1);
  if (!largest || !smallest || short <= 0) return undefined;
  const priced = sizes.every((each) => each.paid !== undefined);
  const ahead = Math.max(0, Math.floor((short - MOST_TRIED * smallest.size) / largest.size));
  const best = tryOut(short - ahead * largest.size, sizes, priced);
  const counts = best.map((count, nr) => (nr === 0 ? count + ahead : count));
  const packs = sizes.flatMap(({ size }, nr) => ((counts[nr] ?? 0) > 0 ? [{ size, count: counts[nr] ?? 0 }] : []));
  const paidOf = new Map(sizes.map(({ size, paid }) => [size, paid]));
  const known = packs.every(({ size }) => paidOf.get(size) !== undefined);
  return {
    packs,
    amount: packs.reduce((sum, { size, count }) => sum + size * count, 0),
    price: known
      ? minorUnits(packs.reduce((sum, { size, count }) => sum + (paidOf.get(size) ?? 0) * count, 0))
      : undefined,
  };
}

/** Every sensible number of each size, the better one kept. */
function tryOut(short: number, sizes: readonly PackageOffer[], priced: boolean): number[] {
  let best: { counts: number[]; rank: readonly number[] } | undefined;
  const walk = (nr: number, missing: number, counts: number[]): void => {
    const offer = sizes[nr];
    if (!offer) return;
    const enough = Math.max(0, Math.ceil(missing / offer.size));
    if (nr === sizes.length - 1) {
      keep([...counts, enough]);
      return;
    }
    for (let count = enough; count >= 0; count -= 1) walk(nr + 1, missing - count * offer.size, [...counts, count]);
  };
  const keep = (counts: number[]): void => {
    const sum = (of: (offer: PackageOffer) => number) =>
      sizes.reduce((total, offer, nr) => total + of(offer) * (counts[nr] ?? 0), 0);
    const rank = [priced ? sum((offer) => offer.paid ?? 0) : 0, sum((offer) => offer.size), sum(() => 1)];
    if (!best || before(rank, best.rank)) best = { counts, rank };
  };
  walk(0, short, []);
  return best?.counts ?? [];
}

/** Those tried first have more of the larger sizes, so that what is equal stays. */
function before(a: readonly number[], b: readonly number[]): boolean {
  const nr = a.findIndex((each, at) => each !== b[at]);
  return nr >= 0 && (a[nr] ?? 0) < (b[nr] ?? 0);
}
