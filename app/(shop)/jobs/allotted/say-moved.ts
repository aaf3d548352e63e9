import type { AllocationNeed, Take } from '@/shared/allocation/allocation-ask';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/**
 * How far what a need would get by hand differs from what was worked out, in amounts: what comes from other tins, and what
 * more or less of it can be had. Empty where both give it the same.
 */
export function sayMoved(
  { id, unit }: AllocationNeed,
  { best, byHand }: { best: readonly Take[]; byHand: readonly Take[] },
  { prefer }: { prefer: UnitSystem },
): string {
  const say = (amount: number) => printQuantity(amountOf(unit, amount), unit, { prefer });
  const amounts = (takes: readonly Take[]) =>
    new Map(takes.flatMap(({ needId, containerId, amount }) => (needId === id ? [[containerId, amount]] : [])));
  const sum = (list: Iterable<number>) => [...list].reduce((total, each) => total + each, 0);
  const [ours, theirs] = [amounts(best), amounts(byHand)];
  const moved = sum([...theirs].map(([tin, amount]) => Math.max(0, amount - (ours.get(tin) ?? 0))));
  const more = sum(theirs.values()) - sum(ours.values());
  const elsewhere = moved - Math.max(0, more);
  return [
    ...(elsewhere > 0 ? [`${say(elsewhere)} from other tins`] : []),
    ...(more > 0 ? [`${say(more)} more can be had`] : more < 0 ? [`${say(-more)} less can be had`] : []),
  ].join('; ');
}
