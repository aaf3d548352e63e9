import type { Figure } from '@/app/(shop)/pieces/_ui/figure-list';
import type { FiguredPiece } from '@/app/(shop)/pieces/figured-piece';
import { sayMass } from '@/app/(shop)/pieces/say-mass';
import { weighFlattened, type workOutFlattening } from '@/app/(shop)/pieces/work-out-flattening';
import { DRY_ENOUGH } from '@/app/(shop)/pieces/work-out-weight';
import type { Nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { Explained } from '@/shared/wood/explained';
import type { Flattened } from '@/shared/wood/flatten-piece';
import type { Species } from '@/shared/wood/species';

/** What is left, in words. */
export function sayLeft({ value }: Explained<Flattened>, prefer: UnitSystem): string {
  return value.nothingLeft ? 'nothing' : printLength(value.left, { prefer, denominator: 32 });
}

/** What flattening leaves, and what the piece weighs before and after it, as numbers that open to how they were reckoned. */
export function flatteningFigures(
  piece: FiguredPiece,
  species: Species | null,
  thickness: Nanometres,
  flat: ReturnType<typeof workOutFlattening>,
  prefer: UnitSystem,
): readonly Figure[] {
  const { whole, cutFirst } = flat;
  const weighed = whole.value.nothingLeft ? undefined : weighFlattened(piece, species, thickness, whole.value.left);
  return [
    { term: 'Left, flattened whole', value: sayLeft(whole, prefer), how: whole.how },
    ...(cutFirst ? [{ term: 'Left, cut to size first', value: sayLeft(cutFirst, prefer), how: cutFirst.how }] : []),
    ...(weighed?.ok
      ? (['before', 'after'] as const).map((when) => {
          const { kilograms } = weighed.value[when];
          return {
            term: `Weighs ${when} it is flattened, at ${DRY_ENOUGH} %`,
            value: sayMass(kilograms.value, prefer),
            how: kilograms.how,
          };
        })
      : []),
  ];
}
