import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What was promised or released, for the history: `1.2 kg of C-4K7VMX, S-2ABCDE`. A few, and how many more. */
export function sayAmounts(
  parts: readonly { label: string; amount: number; unit: StockUnit; kind: 'container' | 'piece' }[],
  units: string,
): string {
  const prefer: UnitSystem = units === 'imperial' ? 'imperial' : 'metric';
  const byThing = new Map<string, (typeof parts)[number]>();
  for (const part of parts) {
    const known = byThing.get(part.label);
    byThing.set(part.label, { ...part, amount: part.amount + (known?.amount ?? 0) });
  }
  const things = [...byThing.values()];
  const said = things.slice(0, 6).map(({ label, amount, unit, kind }) => {
    const name = printOwnLabel(label as OwnLabelCode);
    return kind === 'piece' ? name : `${printQuantity(amountOf(unit, amount), unit, { prefer })} of ${name}`;
  });
  return things.length > 6 ? `${said.join(', ')} and ${things.length - 6} more` : said.join(', ');
}
