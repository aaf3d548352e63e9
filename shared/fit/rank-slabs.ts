import type { FitAnswer } from '@/shared/fit/fit-answer';
import type { MinorUnits } from '@/shared/units/minor-units';
import type { Nanometres } from '@/shared/units/nanometres';

/** What is known of a slab when it is ranked for a top. What is unknown is undefined, never guessed. */
export type SlabFacts = {
  readonly id: string;
  readonly answer: FitAnswer['answer'];
  /** Wood left over, and how much of it stays in one piece, in square millimetres; for a yes. */
  readonly wasteArea?: number;
  readonly offcutArea?: number;
  /** Days from the day asked for to the day it is dry: zero or below is in time. */
  readonly dryInDays?: number;
  readonly thicknessLeft?: Nanometres;
  readonly thicknessWanted?: Nanometres;
  /** The share of its cost that falls to the top. */
  readonly price?: MinorUnits;
  /** Grams, of the finished top; and the most it may weigh. */
  readonly weight?: number;
  readonly mostWeight?: number;
  readonly promised: boolean;
  /** Taken alone it would leave the other half of its pair without one. */
  readonly splitsPair?: boolean;
  /** What is poured between two pieces, in square millimetres of the top. */
  readonly riverArea?: number;
};

/** A reason for a slab's place, the weightiest first. `standing` says whether it speaks for the slab. */
export type RankReason = {
  readonly about: 'fit' | 'promised' | 'pair' | 'thickness' | 'weight' | 'dry' | 'river' | 'waste' | 'price';
  readonly standing: 'for' | 'against' | 'unknown';
  /** Days late, nanometres short, grams over, square millimetres wasted, or minor units; where there is a number. */
  readonly amount?: number;
};

export type RankedSlab = { readonly id: string; readonly rank: number; readonly reasons: readonly RankReason[] };

/**
 * Slabs in the order a maker would take them, each with its reasons. First whether the top can be cut at all (yes, nearly,
 * no); then what would stop it: already promised, too thin, too heavy, not dry by the day, half of a pair; a slab of which one of these
 * is unknown comes after those known to be good and before those known to be bad. Then the
 * least resin, where there is a river; the least wood wasted beyond the
 * offcut kept, then the price, unknown last, then the order given. Facts alone decide; common practice.
 */
export function rankSlabs(slabs: readonly SlabFacts[]): readonly RankedSlab[] {
  const judged = slabs.map((slab, nr) => ({ slab, nr, reasons: reasonsOf(slab) }));
  judged.sort((a, b) => {
    const keys = [keyOf(a.slab, a.reasons), keyOf(b.slab, b.reasons)] as const;
    for (const [at, one] of keys[0].entries()) {
      const two = keys[1][at] ?? 0;
      if (one !== two) return one < two ? -1 : 1;
    }
    return a.nr - b.nr;
  });
  return judged.map(({ slab, reasons }, nr) => ({ id: slab.id, rank: nr + 1, reasons }));
}

const STANDING = { for: 0, unknown: 1, against: 2 } as const;
const ANSWER = { yes: 0, nearly: 1, no: 2 } as const;

function keyOf(slab: SlabFacts, reasons: readonly RankReason[]): readonly number[] {
  const standing = (about: RankReason['about']) =>
    STANDING[reasons.find((reason) => reason.about === about)?.standing ?? 'for'];
  const blocked = (['promised', 'thickness', 'weight', 'dry', 'pair'] as const).map(standing);
  // One thing that stops it stops it as much as two; which one matters only among equals.
  const { answer, riverArea = 0, price = Infinity } = slab;
  return [ANSWER[answer], Math.max(...blocked), ...blocked, riverArea, lost(slab) ?? Infinity, price];
}

function lost({ wasteArea, offcutArea = 0 }: SlabFacts): number | undefined {
  return wasteArea === undefined ? undefined : Math.max(0, wasteArea - offcutArea);
}

function reasonsOf(slab: SlabFacts): readonly RankReason[] {
  const { answer, promised, dryInDays, thicknessLeft, thicknessWanted, weight, mostWeight, price } = slab;
  const reasons: RankReason[] = [{ about: 'fit', standing: answer === 'yes' ? 'for' : 'against' }];
  reasons.push({ about: 'promised', standing: promised ? 'against' : 'for' });
  if (slab.splitsPair) reasons.push({ about: 'pair', standing: 'against' });
  if (slab.riverArea !== undefined) reasons.push({ about: 'river', standing: 'for', amount: slab.riverArea });
  if (thicknessWanted !== undefined) {
    reasons.push(against('thickness', thicknessLeft === undefined ? undefined : thicknessWanted - thicknessLeft));
  }
  if (mostWeight !== undefined) reasons.push(against('weight', weight === undefined ? undefined : weight - mostWeight));
  reasons.push(against('dry', dryInDays));
  const waste = lost(slab);
  if (waste !== undefined) reasons.push({ about: 'waste', standing: 'for', amount: waste });
  reasons.push(
    price === undefined ? { about: 'price', standing: 'unknown' } : { about: 'price', standing: 'for', amount: price },
  );
  const order = { against: 0, unknown: 1, for: 2 } as const;
  return reasons.sort((a, b) => order[a.standing] - order[b.standing]);
}

function against(about: RankReason['about'], over: number | undefined): RankReason {
  if (over === undefined) return { about, standing: 'unknown' };
  return over > 0 ? { about, standing: 'against', amount: over } : { about, standing: 'for' };
}
