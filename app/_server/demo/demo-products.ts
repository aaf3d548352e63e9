import type { DemoAct } from '@/app/_server/demo/demo-shop';
import type { ProductFields } from '@/app/_server/products/product-fields';
import { teachProduct } from '@/app/_server/products/teach-product';
import type { Life } from '@/shared/calendar/life';
import { gtinCheckDigit } from '@/shared/scan-codes/gtin-check-digit';
import { defaultPolicy } from '@/shared/shelf-life/default-policy';
import type { MaterialKind } from '@/shared/shelf-life/material-kinds';

const months = (count: number): Life => ({ count, unit: 'month' });

/** What a row says apart from its kind's default policy. */
type Row = Partial<ProductFields> &
  Pick<ProductFields, 'name' | 'maker' | 'unit' | 'packageSize'> & { kind: MaterialKind };

const DEEP = { maker: 'Quillow', unit: 'mg', statedLifeBasis: 'data-sheet', openedLifeBasis: 'data-sheet' } as const;

const ROWS: [key: string, row: Row][] = [
  [
    'deep-a',
    {
      ...DEEP,
      kind: 'resin-a',
      name: 'Deep-pour resin, part A',
      packageSize: 5_000_000,
      tareMg: 265_000,
      densityGramsPerLitre: 1110,
      statedLife: months(24),
      openedLife: months(12),
      system: { name: 'Quillow Deep', part: 'A' },
      hazards: ['GHS07', 'GHS09'],
    },
  ],
  [
    'deep-b',
    {
      ...DEEP,
      kind: 'resin-b',
      name: 'Deep-pour resin, part B',
      packageSize: 2_000_000,
      tareMg: 140_000,
      densityGramsPerLitre: 960,
      statedLife: months(12),
      openedLife: months(6),
      system: { name: 'Quillow Deep', part: 'B' },
      hazards: ['GHS05', 'GHS07', 'GHS09'],
      note: 'Can sensitise the skin for good: gloves, and sleeves down.',
    },
  ],
  [
    'coat-a',
    {
      ...DEEP,
      kind: 'resin-a',
      name: 'Coating resin, part A',
      packageSize: 1_000_000,
      tareMg: 90_000,
      densityGramsPerLitre: 1130,
      statedLife: months(24),
      openedLife: months(12),
      system: { name: 'Quillow Coat', part: 'A' },
      hazards: ['GHS07', 'GHS09'],
    },
  ],
  [
    'coat-b',
    {
      ...DEEP,
      kind: 'resin-b',
      name: 'Coating resin, part B',
      packageSize: 500_000,
      tareMg: 60_000,
      densityGramsPerLitre: 980,
      statedLife: months(12),
      openedLife: months(6),
      system: { name: 'Quillow Coat', part: 'B' },
      hazards: ['GHS05', 'GHS07'],
    },
  ],
  [
    'hardwax',
    {
      kind: 'hardwax-oil',
      name: 'Hardwax oil, satin',
      maker: 'Harrowmere',
      unit: 'uL',
      packageSize: 750_000,
      statedLife: months(36),
      statedLifeBasis: 'label',
      openedLife: months(12),
      openedLifeBasis: 'label',
      hazards: ['GHS02'],
      note: 'Soaked rags can heat up by themselves: dry them flat, singly, outside.',
    },
  ],
  [
    'waterborne',
    {
      kind: 'waterborne',
      name: 'Waterborne topcoat, matt',
      maker: 'Harrowmere',
      unit: 'uL',
      packageSize: 1_000_000,
      densityGramsPerLitre: 1040,
      hazards: [],
    },
  ],
  [
    'two-part-oil',
    {
      kind: 'two-part-oil',
      name: 'Two-part oil, natural',
      maker: 'Harrowmere',
      unit: 'uL',
      packageSize: 350_000,
      hazards: ['GHS07'],
    },
  ],
  [
    'varnish',
    {
      kind: 'varnish',
      name: 'Rubbing varnish, gloss',
      maker: 'Harrowmere',
      unit: 'uL',
      packageSize: 500_000,
      hazards: ['GHS02', 'GHS07'],
    },
  ],
  [
    'lacquer',
    {
      kind: 'pre-catalysed-lacquer',
      name: 'Pre-catalysed lacquer, satin',
      maker: 'Harrowmere',
      unit: 'uL',
      packageSize: 1_000_000,
      hazards: ['GHS02', 'GHS07'],
    },
  ],
  [
    'shellac',
    {
      kind: 'shellac-mixed',
      name: 'Shellac, two-pound cut, amber',
      maker: 'Own mix',
      unit: 'uL',
      packageSize: 500_000,
      hazards: ['GHS02', 'GHS07'],
    },
  ],
  [
    'flakes',
    {
      kind: 'shellac-dry',
      name: 'Shellac flakes, dewaxed',
      maker: 'Harrowmere',
      unit: 'mg',
      packageSize: 250_000,
      hazards: [],
    },
  ],
  [
    'pva',
    {
      kind: 'pva',
      name: 'PVA glue, water resistant',
      maker: 'Netherby Glues',
      unit: 'uL',
      packageSize: 1_000_000,
      densityGramsPerLitre: 1080,
      statedLifeBasis: 'label',
      hazards: [],
    },
  ],
  [
    'hide-glue',
    {
      kind: 'hide-glue',
      name: 'Liquid hide glue',
      maker: 'Netherby Glues',
      unit: 'uL',
      packageSize: 250_000,
      hazards: [],
    },
  ],
  [
    'pu-glue',
    {
      kind: 'polyurethane-glue',
      name: 'Polyurethane glue',
      maker: 'Netherby Glues',
      unit: 'mg',
      packageSize: 500_000,
      hazards: ['GHS07', 'GHS08'],
    },
  ],
  [
    'ca',
    {
      kind: 'cyanoacrylate',
      name: 'CA glue, thin',
      maker: 'Netherby Glues',
      unit: 'mg',
      packageSize: 50_000,
      openedLife: months(3),
      openedLifeBasis: 'label',
      hazards: ['GHS07'],
    },
  ],
  [
    'contact',
    {
      kind: 'contact-cement',
      name: 'Contact cement',
      maker: 'Netherby Glues',
      unit: 'uL',
      packageSize: 1_000_000,
      hazards: ['GHS02', 'GHS07', 'GHS09'],
    },
  ],
  [
    'pigment-blue',
    {
      kind: 'pigment',
      name: 'Pigment paste, deep blue',
      maker: 'Drumlin Colour',
      unit: 'mg',
      packageSize: 100_000,
      hazards: [],
    },
  ],
  [
    'mica-copper',
    {
      kind: 'pigment',
      name: 'Mica powder, copper',
      maker: 'Drumlin Colour',
      unit: 'mg',
      packageSize: 50_000,
      hazards: [],
    },
  ],
  [
    'discs-120',
    {
      kind: 'abrasive',
      name: 'Abrasive discs 150 mm, grit 120',
      maker: 'Pellmoor',
      unit: 'piece',
      packageSize: 50,
      hazards: [],
    },
  ],
  [
    'discs-240',
    {
      kind: 'abrasive',
      name: 'Abrasive discs 150 mm, grit 240',
      maker: 'Pellmoor',
      unit: 'piece',
      packageSize: 50,
      hazards: [],
    },
  ],
  [
    'inserts',
    {
      kind: 'hardware',
      name: 'Threaded inserts M8, brass',
      maker: 'Pellmoor',
      unit: 'piece',
      packageSize: 100,
      hazards: [],
    },
  ],
];

/** Taught at the first delivery, each with the code of its label; the workshop's own shellac has none. */
export const DEMO_PRODUCTS: readonly DemoAct[] = [
  {
    daysAgo: 239,
    hour: 9,
    by: 'maren',
    async act(shop) {
      for (const [nr, [key, row]] of ROWS.entries()) {
        const code = row.maker === 'Own mix' ? undefined : exampleGtin(nr + 1);
        const { productId } = await shop.run(teachProduct, { ...fieldsOf(row), code });
        shop.keep(key, productId);
        shop.keep(`size ${key}`, row.packageSize);
      }
    },
  },
];

function fieldsOf(row: Row): ProductFields {
  const { says, suggestedInspectionLife, kind: policyKind, storage, system, ...policy } = defaultPolicy(row.kind);
  return {
    ...policy,
    policyKind,
    storageLeastTenthsC: storage && storage.leastC * 10,
    storageMostTenthsC: storage && storage.mostC * 10,
    hazards: [],
    safetySheet: '',
    note: '',
    ...row,
  };
}

/** A GTIN-13 under 952, the prefix GS1 keeps for examples, in the fourteen digits the book stores. */
function exampleGtin(nr: number): string {
  const digits = `952123400${String(nr).padStart(3, '0')}`;
  return `0${digits}${gtinCheckDigit(digits)}`;
}
