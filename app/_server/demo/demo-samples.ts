import type { DemoAct, DemoShop } from '@/app/_server/demo/demo-shop';
import { keepSample } from '@/app/_server/samples/keep-sample';
import { lookAtSample } from '@/app/_server/samples/look-at-sample';
import { recordInspection } from '@/app/_server/stock/record-inspection';
import { recordTreatment } from '@/app/_server/treatments/record-treatment';

/** A lot of a part of the demo's casting resin, the newest that has any. */
async function lotOf(shop: DemoShop, part: 'A' | 'B'): Promise<number> {
  const lot = await shop.book.read.lot.findFirstOrThrow({
    where: { product: { part, system: { products: { some: { name: { contains: 'Deep' } } } } }, code: { not: null } },
    orderBy: { stockId: 'desc' },
    select: { stockId: true },
  });
  return lot.stockId;
}

const label = async (shop: DemoShop, lotId: number) =>
  (
    await shop.book.read.container.findFirstOrThrow({
      where: { lotId, stock: { quantity: { gt: 0 } } },
      orderBy: { stockId: 'asc' },
      select: { stock: { select: { label: true } } },
    })
  ).stock.label ?? '';

/** Two lots tried together, a jug warmed and stirred after a cold night, and cured pieces kept of what was poured. */
export const DEMO_SAMPLES: readonly DemoAct[] = [
  {
    daysAgo: 40,
    hour: 14,
    by: 'maren',
    async act(shop) {
      const [lotId, pairLotId] = [await lotOf(shop, 'A'), await lotOf(shop, 'B')];
      await shop.run(recordInspection, {
        lotId,
        pairLotId,
        kind: 'test-pour',
        madeOn: shop.on,
        passed: true,
        validUntil: shop.day(60),
        method: 'Cup 50 mm wide',
        note: 'No cloud at the rim.',
        massMg: 100_000,
        roomTenthsC: 210,
        minutes: 55,
        result: 'Hard and clear after a night',
      });
      await shop.run(keepSample, {
        name: 'Test cup of the new lots',
        lotAId: lotId,
        lotBId: pairLotId,
        placeLabel: shop.label('pour-bench'),
        madeOn: shop.on,
        lookOn: shop.day(-2),
        note: 'On the window sill, in the sun.',
      });
    },
  },
  {
    daysAgo: 6,
    hour: 9,
    by: 'tobi',
    async act(shop) {
      const jug = await label(shop, await lotOf(shop, 'A'));
      await shop.run(recordTreatment, {
        label: jug,
        kind: 'crystals-seen',
        doneOn: shop.on,
        note: 'After the cold night.',
      });
      await shop.run(recordTreatment, {
        label: jug,
        kind: 'warmed',
        doneOn: shop.on,
        tenthsC: 550,
        minutes: 90,
        note: '',
      });
      await shop.run(recordTreatment, {
        label: jug,
        kind: 'stirred',
        doneOn: shop.on,
        minutes: 10,
        note: 'Clear again.',
      });
    },
  },
  {
    daysAgo: 5,
    hour: 16,
    by: 'maren',
    async act(shop) {
      const lift = await shop.book.read.lift.findFirst({
        where: { pouredBy: { reversedBy: null } },
        orderBy: { id: 'asc' },
        select: { id: true, pouredOn: true },
      });
      if (!lift?.pouredOn) throw new Error('The demo has poured nothing yet.');
      const { sampleId } = await shop.run(keepSample, {
        name: 'Porthole tray, rim offcut',
        liftId: lift.id,
        placeLabel: shop.label('finish-shelf'),
        madeOn: shop.on,
        lookOn: shop.day(25),
        note: '',
      });
      await shop.run(lookAtSample, {
        sampleId,
        lookedOn: shop.on,
        result: 'sound',
        note: 'No mark of a nail.',
        nextOn: shop.day(25),
      });
    },
  },
];
