import { err, ok, type Result } from '@/shared/result/result';
import { gramsPerLitre } from '@/shared/units/density';
import { massToVolume } from '@/shared/units/mass-to-volume';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf, type Milligrams, milligrams, type StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

export type Weighing = { gross: Milligrams; tare: Milligrams };
export type WeighedLeft = { left: number; computed: boolean };
export type WeighedError = { code: 'lighter-than-empty' } | { code: 'no-density' } | { code: 'counted-in-pieces' };

/**
 * What is left in a container by its weight with the container, less the empty container: milligrams as they are, or
 * microlitres through the density (V = m / ρ), which is then marked as computed. Nothing is left when both weigh the same;
 * less than the empty container is `lighter-than-empty`. 1.28 kg in a 180 g jug at 1100 g/L leaves 1 000 000 µL, computed.
 */
export function leftByWeight(
  { gross, tare }: Weighing,
  unit: StockUnit,
  density: number | null,
): Result<WeighedLeft, WeighedError> {
  if (unit === 'piece') return err({ code: 'counted-in-pieces' });
  const net = gross - tare;
  if (net < 0) return err({ code: 'lighter-than-empty' });
  if (unit === 'mg') return ok({ left: net, computed: false });
  const known = density === null ? undefined : gramsPerLitre(density);
  if (!known?.ok) return err({ code: 'no-density' });
  return ok({ left: massToVolume(milligrams(net), known.value).amount, computed: true });
}

/** What a weighing leaves, rounded as the book says it of what is on hand: never more than there is. */
export function sayWeighedLeft(
  { left, computed }: WeighedLeft,
  unit: StockUnit,
  { prefer, density }: { readonly prefer: UnitSystem; readonly density: number | null },
): string {
  const amount = printQuantity(amountOf(unit, left), unit, { prefer, rounding: 'down' });
  return `Leaves ${amount}${computed ? `, computed from its density, ${density} g/L` : ''}.`;
}

/** The error as a sentence beside the field of the weight. */
export function sayWeighedError(error: WeighedError): string {
  switch (error.code) {
    case 'lighter-than-empty':
      return 'That is less than the empty container weighs. Check both weights.';
    case 'no-density':
      return 'The product has no density in the book, so a weight says no volume. Give what is left in the other way.';
    case 'counted-in-pieces':
      return 'This is counted by the piece.';
  }
}
