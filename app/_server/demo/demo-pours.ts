import { namePartsOfPond } from '@/app/_server/demo/demo-base-and-top';
import type { DemoAct, DemoShop } from '@/app/_server/demo/demo-shop';
import { drawDataSheet } from '@/app/_server/demo/draw-data-sheet';
import { addJob } from '@/app/_server/jobs/add-job';
import { keepPour } from '@/app/_server/pours/keep-pour';
import { keepSheet } from '@/app/_server/pours/keep-sheet';
import type { PourFigures } from '@/app/_server/pours/kept-plan';
import { pourLift } from '@/app/_server/pours/pour-lift';
import { readPour } from '@/app/_server/pours/read-pour';
import { receiveSheet } from '@/app/_server/pours/receive-sheet';
import { weighOutForLift } from '@/app/_server/pours/weigh-out';
import type { PourVoid } from '@/shared/pour/void-volume';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { microlitres, milligrams } from '@/shared/units/stock-unit';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';

const mm = (length: number) => nanometres(length * 1_000_000);
const ROOM = tenthsCelsius(195);

const box = (length: number, width: number, depth: number, litresOfWood: number): PourVoid => ({
  from: 'solid',
  solid: { shape: 'box', length: mm(length), width: mm(width), depth: mm(depth) },
  wood: microlitres(litresOfWood * 1_000_000),
});

const figures = (space: PourVoid, sealArea = 0): PourFigures => ({
  space,
  sealArea,
  sealPerSquareMetre: microlitres(250_000),
  leakagePercent: 3,
  lossPerBatch: microlitres(20_000),
  room: ROOM,
  bucket: milligrams(5_000_000),
  minutesPerKilogram: 5,
  step: milligrams(1000),
});

/** The sheets of both resins, one with its file; a pour that is done, one half way, and one still to come. */
export const DEMO_POURS: readonly DemoAct[] = [
  { daysAgo: 60, hour: 9, by: 'maren', act: keepSheets },
  {
    daysAgo: 22,
    hour: 9,
    by: 'maren',
    async act(shop) {
      const job = { purpose: 'own' as const, client: '', name: 'Porthole tray', note: 'For the kitchen; one lift.' };
      await takeOn(shop, 'porthole', { ...job, dayOfUse: shop.day(-12) });
      await plan(shop, { job: 'porthole', name: 'Tray', first: -12, space: box(420, 300, 14, 0.4) });
    },
  },
  {
    daysAgo: 12,
    hour: 10,
    by: 'tobi',
    act: (shop) => pourWhole(shop, 'pour Tray', 1, 'Two bubbles, popped with the torch.'),
  },
  {
    daysAgo: 8,
    hour: 9,
    by: 'maren',
    async act(shop) {
      const client = { purpose: 'client' as const, client: 'Ines Calloway', name: 'Pond coffee table' };
      await takeOn(shop, 'pond', { ...client, note: 'Deep green, two lifts.', dayOfUse: shop.day(2) });
      await namePartsOfPond(shop);
      const part = 'Pond top';
      const space = box(600, 200, 68, 6.4);
      await plan(shop, { job: 'pond', part, name: 'Pond', first: -3, space, sealArea: 140_000 });
      await plan(shop, {
        job: 'pond',
        part,
        name: 'Cracks',
        first: 12,
        space: {
          from: 'fills',
          fills: [
            { area: 2600, depth: mm(30) },
            { area: 900, depth: mm(12) },
          ],
        },
      });
    },
  },
  { daysAgo: 3, hour: 10, by: 'maren', act: (shop) => pourWhole(shop, 'pour Pond', 0, 'Brushed on twice.') },
  { daysAgo: 2, hour: 10, by: 'maren', act: (shop) => pourWhole(shop, 'pour Pond', 1, '') },
  {
    daysAgo: 1,
    hour: 11,
    by: 'maren',
    // Part A of the last lift is in the bucket; the phone died.
    act: (shop) => weigh(shop, 'pour Pond', 2, ['A']),
  },
];

async function keepSheets(shop: DemoShop): Promise<void> {
  const systemId = await systemOf(shop, 'Quillow Deep');
  const sheet = unwrap(
    await receiveSheet(
      drawDataSheet([
        'Quillow Deep',
        'Part A to part B: 100 to 40 by mass, 13 to 6 by volume',
        'Up to 40 mm a lift at 22 C',
      ]),
      'Quillow Deep data sheet.pdf',
    ),
  );
  await shop.run(keepSheet, {
    systemId,
    sheet,
    facts: {
      byMass: { a: 100, b: 40 },
      byVolume: { a: 13, b: 6 },
      densityA: 1110,
      densityB: 960,
      mixedDensity: 1060,
      toleranceTenths: 20,
      depths: [
        { least: mm(6), most: mm(40), upTo: tenthsCelsius(220), mostMass: milligrams(12_000_000) },
        { least: mm(6), most: mm(25), upTo: tenthsCelsius(260), mostMass: milligrams(6_000_000) },
      ],
      potLives: [
        { minutes: 90, mass: milligrams(100_000), at: tenthsCelsius(230) },
        { minutes: 55, mass: milligrams(5_000_000), at: tenthsCelsius(230) },
      ],
      againFromHours: 18,
      againToHours: 30,
      demouldHours: 96,
      fullCureDays: 10,
      leastRoom: tenthsCelsius(160),
      mostRoom: tenthsCelsius(260),
      shrinkageHundredths: 250,
    },
  });
  await shop.run(keepSheet, {
    systemId: await systemOf(shop, 'Quillow Coat'),
    facts: {
      byVolume: { a: 2, b: 1 },
      densityA: 1130,
      densityB: 980,
      depths: [{ least: mm(1), most: mm(6) }],
      potLives: [{ minutes: 30, mass: milligrams(100_000), at: tenthsCelsius(230) }],
      againFromHours: 6,
      againToHours: 12,
    },
  });
}

async function systemOf({ book }: DemoShop, name: string): Promise<number> {
  return (await book.read.resinSystem.findUniqueOrThrow({ where: { name }, select: { id: true } })).id;
}

async function takeOn(shop: DemoShop, key: string, fields: Parameters<typeof addJob>[2]): Promise<void> {
  const { jobId } = await shop.run(addJob, fields);
  shop.keep(`job ${key}`, jobId);
}

type Planned = { job: string; part?: string; name: string; first: number; space: PourVoid; sealArea?: number };

async function plan(shop: DemoShop, { job, part, name, first, space, sealArea }: Planned): Promise<void> {
  const { pourId } = await shop.run(keepPour, {
    jobId: shop.id(`job ${job}`),
    partId: part === undefined ? null : shop.id(`part ${part}`),
    systemId: await systemOf(shop, 'Quillow Deep'),
    name,
    figures: figures(space, sealArea),
    first: shop.day(first),
    reason: '',
    typed: {},
  });
  shop.keep(`pour ${name}`, pourId);
}

const FROM = { A: 'deep-a new 3', B: 'deep-b new 3' } as const;

async function weigh(shop: DemoShop, key: string, nr: number, parts: readonly ('A' | 'B')[]): Promise<void> {
  const pourId = shop.id(key);
  const lift = (await readPour(shop.book.read, pourId))?.lifts.find((each) => each.nr === nr);
  for (const [row, batch] of (lift?.batches ?? []).entries()) {
    for (const part of parts) {
      const mass = part === 'A' ? batch.a : batch.b;
      const label = shop.label(FROM[part]);
      await shop.run(weighOutForLift, { pourId, nr, batch: row + 1, part, label, mass, seen: 'care' });
    }
  }
}

async function pourWhole(shop: DemoShop, key: string, nr: number, note: string): Promise<void> {
  await weigh(shop, key, nr, ['A', 'B']);
  await shop.run(pourLift, { pourId: shop.id(key), nr, room: ROOM, humidityTenths: 470, note, reason: '' });
}
