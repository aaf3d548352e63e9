import type { PieceLine } from '@/app/_server/stock/load-piece';

/** Of any one wood so many of the largest pieces are tried against one another. */
const MOST_OF_A_WOOD = 12;

export type Pair = readonly [PieceLine, PieceLine];

/**
 * Sisters that lie side by side in their log, and pieces that are kept as a pair: what can be opened like a book. A piece of
 * which nobody knows where in the log it lies is only paired by hand.
 */
export function sisterPairs(
  lines: readonly PieceLine[],
  isPlaced: (line: PieceLine) => boolean = () => true,
): readonly Pair[] {
  const pairs = new Map<string, Pair>();
  const add = (one: PieceLine, two: PieceLine) => {
    const [first, second] = one.stockId < two.stockId ? [one, two] : [two, one];
    pairs.set(`${first.stockId} ${second.stockId}`, [first, second]);
  };
  const byLabel = new Map<string, PieceLine>(lines.map((line) => [line.label, line]));
  const byPlace = new Map<string, PieceLine[]>();
  for (const line of lines) {
    const place = `${line.species}/${line.flitch}/${line.flitchNumber}`;
    byPlace.set(place, [...(byPlace.get(place) ?? []), line]);
  }
  for (const line of lines) {
    const kept = line.pairedWith && byLabel.get(line.pairedWith.label);
    if (kept) add(line, kept);
    if (line.flitch === '' || line.flitchNumber === null || !isPlaced(line)) continue;
    // What was cut from one slab has its number; each of them lay beside whatever was cut from the next.
    const next = byPlace.get(`${line.species}/${line.flitch}/${line.flitchNumber + 1}`) ?? [];
    for (const other of next) if (isPlaced(other)) add(line, other);
  }
  return [...pairs.values()];
}

/** What a river may run between: each piece sawn down its length, sisters, and the largest of a wood with one another. */
export function riverPairs(lines: readonly PieceLine[]): readonly (readonly [PieceLine] | Pair)[] {
  const pairs = new Map<string, readonly [PieceLine] | Pair>();
  for (const [one, two] of sisterPairs(lines)) pairs.set(`${one.stockId} ${two.stockId}`, [one, two]);
  for (const line of lines) pairs.set(String(line.stockId), [line]);
  const woods = new Map<string, PieceLine[]>();
  for (const line of lines) woods.set(line.species, [...(woods.get(line.species) ?? []), line]);
  for (const all of woods.values()) {
    const largest = all.slice(0, MOST_OF_A_WOOD);
    largest.forEach((one, nr) => {
      for (const two of largest.slice(nr + 1)) {
        const [first, second] = one.stockId < two.stockId ? [one, two] : [two, one];
        pairs.set(`${first.stockId} ${second.stockId}`, [first, second]);
      }
    });
  }
  return [...pairs.values()];
}
