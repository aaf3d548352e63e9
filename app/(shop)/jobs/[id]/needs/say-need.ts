import type { NeedFacts } from '@/app/_server/needs/standing-needs';
import type { Money } from '@/shared/promise/cost-of-need';
import type { Packages } from '@/shared/promise/packages-to-buy';
import type { CurrencyCode } from '@/shared/units/currency';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import { printMoney } from '@/shared/units/print-money';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** An amount as it is shown: what is there rounded down, what must be bought up. */
export function sayAmount(
  amount: number,
  unit: StockUnit,
  prefer: UnitSystem,
  rounding: 'nearest' | 'down' | 'up' = 'nearest',
): string {
  return printQuantity(amountOf(unit, amount), unit, { prefer, rounding });
}

/** What is needed: `2.4 kg Tarn deep pour, part A`, `2 Walnut boards`. */
export function sayNeed(need: NeedFacts, prefer: UnitSystem): { amount: string; name: string; size: string } {
  const { product, system, wood, amount, unit } = need;
  if (product || system) {
    const name = product?.name ?? `${system?.name}, part ${system?.part}`;
    return { amount: sayAmount(amount, unit, prefer), name, size: '' };
  }
  const form = wood?.form || (amount === 1 ? 'piece' : 'piece');
  const many = amount === 1 ? form : form.endsWith('ch') ? `${form}es` : `${form}s`;
  const name = wood?.species ? `${wood.species} ${many}` : `${many} of any wood`;
  const length = (nm: number | null | undefined) =>
    nm ? printLength(nanometres(nm), { prefer, style: 'inches' }) : null;
  const sizes = [
    ['long', length(wood?.lengthNm)],
    ['wide', length(wood?.widthNm)],
    ['thick', length(wood?.thicknessNm)],
  ]
    .filter(([, said]) => said !== null)
    .map(([word, said]) => `${said} ${word}`);
  return { amount: String(amount), name, size: sizes.length ? `At least ${sizes.join(', ')}` : '' };
}

/** `3 × 2.5 kg and 1 × 500 g`; of wood, how many pieces. */
export function sayPackages({ packs }: Packages, unit: StockUnit, prefer: UnitSystem): string {
  if (unit === 'piece' && packs.every(({ size }) => size === 1)) {
    const count = packs.reduce((sum, each) => sum + each.count, 0);
    return `${count} ${count === 1 ? 'piece' : 'pieces'}`;
  }
  return packs.map(({ size, count }) => `${count} × ${sayAmount(size, unit, prefer)}`).join(' and ');
}

/** Money that may not be known whole: `$12.50`, `$12.50 and more`, `not known`. */
export function sayCost({ minor, known }: Money, currency: CurrencyCode): string {
  if (known) return minor === 0 ? 'nothing' : printMoney(minor, currency);
  return minor > 0 ? `${printMoney(minor, currency)} and more` : 'not known';
}
