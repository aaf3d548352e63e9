import { err, ok, type Result } from '@/shared/result/result';
import { gramsPerLitre } from '@/shared/units/density';
import { massToVolume } from '@/shared/units/mass-to-volume';
import { milligrams, type StockUnit } from '@/shared/units/stock-unit';

export type Weighing = {
  readonly unit: StockUnit;
  /** What the book says is left, in the small unit. */
  readonly left: number;
  /** The container with what is in it, milligrams; before the pour where it was weighed. */
  readonly beforeMg?: number;
  readonly afterMg: number;
  /** The empty container, where it is known. */
  readonly tareMg: number | null;
  readonly densityGramsPerLitre: number | null;
};

export type WeighingError =
  | { readonly code: 'not-by-weight' }
  | { readonly code: 'no-density' }
  | { readonly code: 'no-start' }
  | { readonly code: 'lighter-than-empty' }
  | { readonly code: 'heavier-than-before' }
  | { readonly code: 'nothing-used' };

/**
 * How much was used, by weighing the container before and after, or after only: then the start is what the book says is
 * left, with the empty container's weight. Milligrams for a material kept by weight. One kept by volume is computed by its
 * density, to the nearest microlitre; counted things are not weighed.
 *
 * 1840 g left in a can of 180 g, 1608 g after: 412 g were used.
 */
export function usedByWeight(weighing: Weighing): Result<number, WeighingError> {
  const { unit, left, beforeMg, afterMg, tareMg } = weighing;
  if (unit === 'piece') return err({ code: 'not-by-weight' });
  const inUnit = measureIn(weighing);
  if (!inUnit) return err({ code: 'no-density' });
  if (tareMg !== null && afterMg < tareMg) return err({ code: 'lighter-than-empty' });
  if (beforeMg === undefined && tareMg === null) return err({ code: 'no-start' });
  const used = beforeMg === undefined ? left - inUnit(afterMg - (tareMg ?? 0)) : signed(inUnit, beforeMg - afterMg);
  if (used < 0) return err({ code: 'heavier-than-before' });
  return used === 0 ? err({ code: 'nothing-used' }) : ok(used);
}

function measureIn({ unit, densityGramsPerLitre }: Weighing): ((mg: number) => number) | undefined {
  if (unit === 'mg') return (mg) => mg;
  const density = densityGramsPerLitre === null ? undefined : gramsPerLitre(densityGramsPerLitre);
  return density?.ok ? (mg) => massToVolume(milligrams(mg), density.value).amount : undefined;
}

function signed(inUnit: (mg: number) => number, mg: number): number {
  return mg < 0 ? -inUnit(-mg) : inUnit(mg);
}
