import type { NeedFacts } from '@/app/_server/needs/standing-needs';
import { nanometres } from '@/shared/units/nanometres';
import { printLengthExact } from '@/shared/units/print-length-exact';
import { printQuantityExact } from '@/shared/units/print-quantity-exact';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { PieceForm } from '@/shared/wood/piece';

/** A need as it stands in the form's fields. */
export type TypedNeed = {
  kind: 'wood' | 'product' | 'part';
  species: string;
  form: '' | PieceForm;
  length: string;
  width: string;
  thickness: string;
  count: string;
  productId: string;
  unit: StockUnit;
  systemId: string;
  part: 'A' | 'B';
  amount: string;
  surface: string;
  stepId: string;
  partId: string;
  note: string;
};

export const NOTHING_TYPED: TypedNeed = {
  kind: 'product',
  species: '',
  form: '',
  length: '',
  width: '',
  thickness: '',
  count: '1',
  productId: '',
  unit: 'mg',
  systemId: '',
  part: 'A',
  amount: '',
  surface: '',
  stepId: '',
  partId: '',
  note: '',
};

/** A need of the book as it would be typed. */
export function typedNeed(need: NeedFacts, prefer: UnitSystem): TypedNeed {
  const { wood, product, system, unit, amount } = need;
  const length = (nm: number | null | undefined) => (nm ? printLengthExact(nanometres(nm), prefer) : '');
  return {
    ...NOTHING_TYPED,
    kind: wood ? 'wood' : product ? 'product' : 'part',
    species: wood?.species ?? '',
    form: (wood?.form ?? '') as TypedNeed['form'],
    length: length(wood?.lengthNm),
    width: length(wood?.widthNm),
    thickness: length(wood?.thicknessNm),
    count: wood ? String(amount) : '1',
    productId: product ? String(product.id) : '',
    unit,
    systemId: system ? String(system.id) : '',
    part: system?.part ?? 'A',
    amount: wood ? '' : printQuantityExact(amountOf(unit, amount), unit),
    surface: need.surface,
    stepId: need.stepId === null ? '' : String(need.stepId),
    partId: need.partId === null ? '' : String(need.partId),
    note: need.note,
  };
}
