import type { BookHead } from '@/app/_server/book/read-book';
import type { ProductPage } from '@/app/_server/products/product-page';
import type { Fact } from '@/app/_ui/facts';
import styles from '@/app/(shop)/products/_ui/products.module.css';
import type { Life } from '@/shared/calendar/life';
import { sayLife } from '@/shared/calendar/say-life';
import { inspectionLife } from '@/shared/shelf-life/inspection-life';
import { isMaterialKind, MATERIAL_KINDS } from '@/shared/shelf-life/material-kinds';
import type { Basis } from '@/shared/shelf-life/types/policy';
import { printQuantity } from '@/shared/units/print-quantity';
import { printTemperature } from '@/shared/units/print-temperature';
import { amountOf, milligrams } from '@/shared/units/stock-unit';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';

const BASIS: Record<Basis, string> = {
  label: 'by the label',
  'data-sheet': 'by the data sheet',
  'house-default': 'house default: the workshop’s own caution, below any printed date',
};

/** How a product keeps, each life with whose word it is. */
export function keepingFacts({ policy, fields }: ProductPage, { units: prefer }: BookHead): Fact[] {
  const life = (given: Life | undefined, basis: Basis) =>
    given ? (
      <>
        {sayLife(given)}
        <span className={styles.basis}>{BASIS[basis]}</span>
      </>
    ) : (
      'Not stated: the container’s own date counts'
    );
  const degrees = (tenths: number) => printTemperature(tenthsCelsius(tenths), { prefer });
  const { storageLeastTenthsC: least, storageMostTenthsC: most } = fields;
  const stands =
    policy.kind === 'keeps'
      ? 'It keeps: no limit is stated'
      : policy.kind === 'fixed'
        ? 'Nothing extends it: past its date it is Stop'
        : 'A passed inspection can extend it';
  return [
    { term: 'Past its date', value: stands },
    ...(policy.kind === 'keeps'
      ? []
      : [
          { term: 'Sealed, from the day made', value: life(policy.statedLife, policy.statedLifeBasis) },
          { term: 'Once opened', value: life(policy.openedLife, policy.openedLifeBasis) },
          {
            term: 'Care is asked',
            value:
              policy.careWindowDays === 0
                ? 'On the last good day only'
                : `From ${policy.careWindowDays} days before the limit`,
          },
        ]),
    ...(policy.kind === 'inspectable' && policy.statedLife
      ? [
          {
            term: 'A passed inspection',
            value: `Is taken to hold ${sayLife(inspectionLife(policy.statedLife))} unless you say otherwise`,
          },
        ]
      : []),
    { term: 'Freezing', value: policy.freezingRuins ? 'Ruins it' : 'Does not ruin it; thaw and test it' },
    ...(least !== undefined && most !== undefined
      ? [{ term: 'Store it', value: `${degrees(least)} to ${degrees(most)}` }]
      : []),
    {
      term: 'A change of lot',
      value: policy.colourShows ? 'Shows in the finished piece: keep to one lot' : 'Does not show',
    },
  ];
}

/** What a product is. */
export function productFacts({ policy, fields }: ProductPage, { units: prefer }: BookHead): Fact[] {
  return [
    { term: 'Kind', value: isMaterialKind(fields.kind) ? MATERIAL_KINDS[fields.kind] : fields.kind },
    { term: 'Maker', value: fields.maker || 'Not in the book' },
    {
      term: 'One container holds',
      value: printQuantity(amountOf(fields.unit, fields.packageSize), fields.unit, { prefer }),
    },
    ...(policy.system ? [{ term: 'Resin system', value: `${policy.system.name}, part ${policy.system.part}` }] : []),
    ...(fields.tareMg === undefined
      ? []
      : [{ term: 'Weighs empty', value: printQuantity(milligrams(fields.tareMg), 'mg', { prefer }) }]),
    ...(fields.densityGramsPerLitre === undefined
      ? []
      : [{ term: 'Density', value: `${fields.densityGramsPerLitre} g/L` }]),
    ...(fields.note ? [{ term: 'Note', value: fields.note }] : []),
  ];
}
