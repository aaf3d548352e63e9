import type { LabelSays } from '@/app/_server/codes/look-up-scan';
import type { TypedProduct } from '@/app/(shop)/arrive/teach-schema';
import { defaultPolicy } from '@/shared/shelf-life/default-policy';
import type { MaterialKind } from '@/shared/shelf-life/material-kinds';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A product nobody has described yet; the size is taken from the label where it states one. `name` is what it was looked for by. */
export function newProduct(code: string | undefined, says: LabelSays | undefined, name = ''): TypedProduct {
  return {
    code,
    name: name.trim(),
    maker: '',
    kind: '',
    size: sizeOnLabel(says),
    policyKind: 'inspectable',
    statedLife: { count: '', unit: 'month', basis: 'label' },
    openedLife: { count: '', unit: 'month', basis: 'label' },
    careWindow: '30',
    freezingRuins: false,
    storageLeast: '',
    storageMost: '',
    colourShows: false,
    systemName: '',
    hazards: [],
    safetySheet: '',
    tare: '',
    density: '',
    note: '',
  };
}

/** The net weight or volume of the goods, as the label states it: `2.5 kg`. */
function sizeOnLabel(says: LabelSays | undefined): string {
  const stated = says?.measures.find(
    ({ of, quantity }) => of === 'goods' && (quantity === 'netMass' || quantity === 'netVolume'),
  );
  if (!stated) return '';
  // The standard's ounce is of weight or of fluid; what it measures says which.
  const unit = stated.unit === 'oz' && stated.quantity === 'netVolume' ? 'fl oz' : stated.unit;
  const decimal = stated.decimal.includes('.') ? stated.decimal.replace(/0+$/, '').replace(/\.$/, '') : stated.decimal;
  return `${decimal} ${unit}`;
}

/** The product with everything that a kind of material starts from: lives, care window, storage. */
export function withKind(product: TypedProduct, kind: MaterialKind, prefer: UnitSystem): TypedProduct {
  const policy = defaultPolicy(kind);
  const life = (given: typeof policy.statedLife) => ({
    count: given ? String(given.count) : '',
    unit: given?.unit ?? 'month',
    basis: 'house-default' as const,
  });
  const degrees = (celsius: number | undefined) => {
    if (celsius === undefined) return '';
    return prefer === 'metric' ? `${celsius} °C` : `${(celsius * 9) / 5 + 32} °F`;
  };
  return {
    ...product,
    kind,
    policyKind: policy.kind,
    statedLife: life(policy.statedLife),
    openedLife: life(policy.openedLife),
    careWindow: String(policy.careWindowDays),
    freezingRuins: policy.freezingRuins,
    storageLeast: degrees(policy.storage?.leastC),
    storageMost: degrees(policy.storage?.mostC),
    colourShows: policy.colourShows,
  };
}
