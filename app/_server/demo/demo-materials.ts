import { type DemoAct, type DemoShop, type Person } from '@/app/_server/demo/demo-shop';
import { drawPourCup } from '@/app/_server/demo/draw-pour-cup';
import { changeHold } from '@/app/_server/stock/change-hold';
import { discard } from '@/app/_server/stock/discard';
import { moveStock } from '@/app/_server/stock/move-stock';
import { noteCondition } from '@/app/_server/stock/note-condition';
import { openContainer } from '@/app/_server/stock/open-container';
import { receiveContainers, type ReceiveContainers } from '@/app/_server/stock/receive-containers';
import { keepDrawing } from '@/app/_server/demo/keep-drawing';
import { recordInspection, type RecordInspection } from '@/app/_server/stock/record-inspection';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import type { Precision } from '@/shared/calendar/precision';
import type { Condition } from '@/shared/shelf-life/types/container-facts';

/** Days from the day the demo is made; how much of the date is printed; and whether a person has read it too. */
type Printed = { in: number; precision?: Precision; confirmed?: boolean };

type Delivery = {
  key: string;
  product: string;
  daysAgo: number;
  by?: Person;
  lot: string | null;
  made?: Printed;
  best?: Printed;
  useBy?: Printed;
  opened?: { in: number; sureness: 'known' | 'guessed' };
} & Partial<Pick<ReceiveContainers, 'count' | 'left' | 'costMinor' | 'conditions' | 'hold' | 'reference' | 'openedLife'>> & { place: string };

const month = (days: number, confirmed = true): Printed => ({ in: days, precision: 'month', confirmed });

const DELIVERIES: Delivery[] = [
  { key: 'deep-a old', product: 'deep-a', daysAgo: 200, lot: 'QA-2274', made: { in: -330 }, best: { in: 16 }, count: 3, costMinor: 11_800, place: 'cabinet-1-low', reference: 'Delivery note 4471' },
  { key: 'deep-a new', product: 'deep-a', daysAgo: 75, lot: 'QA-2311', made: { in: -120 }, best: { in: 610 }, count: 4, costMinor: 12_400, place: 'cabinet-1-low', reference: 'Delivery note 4820' },
  { key: 'deep-b recalled', product: 'deep-b', daysAgo: 200, lot: 'QB-0977', made: { in: -240 }, best: { in: 125 }, count: 1, costMinor: 7_200, place: 'cabinet-1-top', reference: 'Delivery note 4471' },
  { key: 'deep-b held', product: 'deep-b', daysAgo: 130, lot: 'QB-1102', made: { in: -190 }, best: { in: 175 }, count: 3, costMinor: 7_400, place: 'cabinet-1-top', reference: 'Delivery note 4655' },
  { key: 'deep-b new', product: 'deep-b', daysAgo: 75, lot: 'QB-1180', made: { in: -120 }, best: { in: 245 }, count: 3, costMinor: 7_600, place: 'cabinet-1-top', reference: 'Delivery note 4820' },
  { key: 'coat-a', product: 'coat-a', daysAgo: 95, lot: 'KA-40', best: month(310, false), count: 3, costMinor: 3_900, place: 'cabinet-1-top' },
  { key: 'coat-b past', product: 'coat-b', daysAgo: 160, lot: 'KB-17', best: { in: -20 }, count: 2, costMinor: 2_700, place: 'cabinet-1-top' },
  { key: 'coat-b new', product: 'coat-b', daysAgo: 95, lot: 'KB-22', best: { in: 205 }, count: 2, costMinor: 2_800, place: 'cabinet-1-top' },
  { key: 'coat-b undated', product: 'coat-b', daysAgo: 238, lot: null, left: 210_000, opened: { in: -300, sureness: 'guessed' }, place: 'pour-bench' },
  { key: 'hardwax old', product: 'hardwax', daysAgo: 235, lot: 'HW-603', made: month(-500), count: 1, left: 480_000, opened: { in: -240, sureness: 'known' }, costMinor: 5_200, place: 'cabinet-2' },
  { key: 'hardwax past', product: 'hardwax', daysAgo: 230, lot: 'HW-411', best: { in: -60 }, count: 1, left: 300_000, opened: { in: -230, sureness: 'guessed' }, costMinor: 5_200, place: 'cabinet-2' },
  { key: 'hardwax new', product: 'hardwax', daysAgo: 32, lot: 'HW-688', best: month(700), count: 2, costMinor: 5_600, place: 'cabinet-2' },
  { key: 'waterborne', product: 'waterborne', daysAgo: 60, lot: 'WB-0923', made: { in: -90 }, count: 3, costMinor: 3_400, place: 'finish-shelf' },
  { key: 'two-part-oil', product: 'two-part-oil', daysAgo: 44, lot: 'TO-15', best: { in: 150 }, count: 2, costMinor: 4_900, place: 'cabinet-2' },
  { key: 'varnish', product: 'varnish', daysAgo: 236, lot: 'VG-88', best: month(200), left: 350_000, opened: { in: -236, sureness: 'guessed' }, place: 'cabinet-2' },
  { key: 'lacquer', product: 'lacquer', daysAgo: 38, lot: 'PC-301', made: { in: -40 }, best: { in: 30 }, costMinor: 2_900, place: 'cabinet-2' },
  { key: 'shellac old', product: 'shellac', daysAgo: 205, by: 'tobi', lot: 'mixed spring', made: { in: -206 }, left: 190_000, place: 'cabinet-2' },
  { key: 'shellac new', product: 'shellac', daysAgo: 165, by: 'tobi', lot: 'mixed summer', made: { in: -166 }, place: 'cabinet-2' },
  { key: 'flakes', product: 'flakes', daysAgo: 180, lot: 'SF-7', best: month(520), costMinor: 1_900, place: 'finish-shelf' },
  { key: 'pva past', product: 'pva', daysAgo: 190, by: 'tobi', lot: 'P-5520', best: { in: -45 }, count: 2, costMinor: 1_100, place: 'glue-shelf' },
  { key: 'pva new', product: 'pva', daysAgo: 55, by: 'tobi', lot: 'P-5871', best: month(330), count: 2, costMinor: 1_200, place: 'lean-to-shelf' },
  { key: 'hide-glue', product: 'hide-glue', daysAgo: 120, by: 'tobi', lot: 'H-19', best: { in: 48 }, costMinor: 900, place: 'glue-shelf' },
  { key: 'pu-glue', product: 'pu-glue', daysAgo: 150, by: 'tobi', lot: 'U-204', made: month(-215), costMinor: 1_400, place: 'glue-shelf' },
  { key: 'ca gelled', product: 'ca', daysAgo: 140, by: 'tobi', lot: 'C-118', best: { in: 60 }, count: 1, costMinor: 650, place: 'glue-shelf' },
  { key: 'ca new', product: 'ca', daysAgo: 6, by: 'tobi', lot: 'C-131', best: { in: 230 }, count: 2, costMinor: 690, hold: 'quarantine', place: 'glue-shelf', reference: 'Delivery note 5003, box wet' },
  { key: 'contact past', product: 'contact', daysAgo: 220, by: 'tobi', lot: 'CC-09', useBy: { in: -12 }, costMinor: 1_900, place: 'cabinet-2' },
  { key: 'contact new', product: 'contact', daysAgo: 25, by: 'tobi', lot: 'CC-14', useBy: { in: 22 }, costMinor: 2_000, place: 'cabinet-2' },
  { key: 'blue', product: 'pigment-blue', daysAgo: 100, lot: null, count: 2, costMinor: 1_300, place: 'pour-bench' },
  { key: 'copper', product: 'mica-copper', daysAgo: 100, lot: null, count: 1, costMinor: 1_500, place: 'pour-bench' },
  { key: 'discs-120', product: 'discs-120', daysAgo: 90, by: 'tobi', lot: null, count: 2, costMinor: 2_200, place: 'glue-shelf' },
  { key: 'discs-240', product: 'discs-240', daysAgo: 90, by: 'tobi', lot: null, count: 2, costMinor: 2_200, place: 'glue-shelf' },
  { key: 'inserts', product: 'inserts', daysAgo: 90, by: 'tobi', lot: null, count: 1, costMinor: 1_800, place: 'glue-shelf' },
];

const act = (daysAgo: number, hour: number, by: Person, work: DemoAct['act']): DemoAct => ({ daysAgo, hour, by, act: work });
const opened = (daysAgo: number, key: string, by: Person = 'maren') =>
  act(daysAgo, 10, by, (shop) =>
    shop.run(openContainer, { label: shop.label(key), opened: { on: shop.on, sureness: 'known' } }),
  );
const seen = (daysAgo: number, key: string, conditions: Condition[], why: string, by: Person = 'maren') =>
  act(daysAgo, 11, by, (shop) => shop.run(noteCondition, { label: shop.label(key), conditions, why }));
const weighed = (daysAgo: number, key: string, left: number) =>
  act(daysAgo, 15, 'tobi', (shop) => shop.run(weighContainer, { label: shop.label(key), left, why: 'Stocktake' }));

/** Deliveries, and what became of them: opened, seen, weighed, moved, held, inspected, thrown away. */
export const DEMO_MATERIALS: readonly DemoAct[] = [
  ...DELIVERIES.map((each) => act(each.daysAgo, 13, each.by ?? 'maren', (shop) => deliver(shop, each))),
  opened(85, 'coat-b new 1'),
  opened(70, 'hardwax past 1'),
  opened(50, 'waterborne 1'),
  opened(36, 'lacquer 1'),
  opened(100, 'hide-glue 1', 'tobi'),
  opened(60, 'pu-glue 1', 'tobi'),
  opened(110, 'ca gelled 1', 'tobi'),
  opened(20, 'contact new 1', 'tobi'),
  opened(80, 'discs-120 1', 'tobi'),
  opened(80, 'discs-240 1', 'tobi'),
  opened(12, 'two-part-oil 1'),
  act(40, 14, 'tobi', (shop) =>
    shop.run(moveStock, {
      labels: ['deep-a new 4', 'waterborne 3'].map(shop.label),
      placeLabel: shop.label('lean-to-shelf'),
    }),
  ),
  seen(33, 'deep-a old 2', ['crystals'], 'White grains at the bottom. To be warmed and stirred before use.'),
  seen(29, 'deep-b new 2', ['darkened'], 'Amber; it was straw coloured when it came.'),
  seen(26, 'ca gelled 1', ['gelled'], 'Thick as jelly.', 'tobi'),
  seen(24, 'varnish 1', ['skinned-through'], 'Skin all the way down.'),
  seen(15, 'waterborne 2', ['settled'], 'Matting agent on the bottom; stir.', 'tobi'),
  seen(8, 'waterborne 3', ['frozen', 'stored-out-of-range'], 'Ice in the tin after the frost.', 'tobi'),
  seen(7, 'two-part-oil 2', ['haze'], ''),
  weighed(14, 'deep-a old 1', 2_310_000),
  weighed(14, 'discs-120 1', 31),
  act(31, 9, 'maren', (shop) =>
    shop.run(changeHold, {
      stockId: shop.id('lot deep-b held'),
      hold: 'on-hold',
      why: 'Soft spot in the left end of the Harbour table. Hold the lot until the maker answers.',
    }),
  ),
  act(90, 9, 'maren', (shop) =>
    shop.run(changeHold, { stockId: shop.id('lot deep-b recalled'), hold: 'recalled', why: 'Letter from the maker: wrong label on part of this lot.' }),
  ),
  act(58, 9, 'maren', (shop) =>
    shop.run(changeHold, { stockId: shop.id('stock coat-b new 2'), hold: 'quarantine', why: 'Lid was not on tight.' }),
  ),
  act(57, 9, 'maren', (shop) =>
    shop.run(changeHold, { stockId: shop.id('stock coat-b new 2'), hold: 'free', why: 'Looked at: clear, pours well, no skin.' }),
  ),
  inspection(10, 'pva past', { kind: 'inspection', passed: true, method: 'Two blocks glued and broken', note: 'Wood tore, not the glue line.' }, 80),
  inspection(16, 'coat-b past', { kind: 'test-pour', passed: true, method: '100 g with KA-40 in a cup, 24 hours at 21 °C', note: 'Hard right through, no tack, no change of colour.' }, undefined, true),
  inspection(13, 'shellac old', { kind: 'inspection', passed: false, method: 'A drop on glass', note: 'Still sticky after two hours.' }),
  inspection(20, 'deep-a old', { kind: 'test-pour', passed: true, method: '100 g in a cup, 7 days', note: 'Clear and hard.' }),
  act(4, 16, 'tobi', (shop) => shop.run(discard, { label: shop.label('contact past 1'), why: 'Past its use-by; taken to the tip with the solvents.' })),
];

async function deliver(shop: DemoShop, each: Delivery): Promise<void> {
  const { key, product, daysAgo, by, lot, made, best, useBy, opened: open, place, count = 1, ...rest } = each;
  const printed = (date: Printed | undefined) =>
    date && { date: shop.day(date.in), precision: date.precision ?? 'day', confirmed: date.confirmed ?? true };
  const { lotId, containers } = await shop.run(receiveContainers, {
    ...rest,
    productId: shop.id(product),
    lotCode: lot,
    dates: { madeOn: printed(made), bestBefore: printed(best), useBy: printed(useBy) },
    count,
    size: shop.id(`size ${product}`),
    receivedOn: shop.on,
    placeLabel: shop.label(place),
    opened: open && { on: shop.day(open.in), sureness: open.sureness },
  });
  shop.keep(`lot ${key}`, lotId);
  for (const [nr, container] of containers.entries()) {
    shop.keep(`${key} ${nr + 1}`, container.label);
    shop.keep(`stock ${key} ${nr + 1}`, container.stockId);
  }
}

function inspection(
  daysAgo: number,
  key: string,
  what: Pick<RecordInspection, 'kind' | 'passed' | 'method' | 'note'>,
  validIn?: number,
  withPhoto = false,
): DemoAct {
  return act(daysAgo, 12, 'maren', async (shop) => {
    const photo = withPhoto ? await keepDrawing(drawPourCup(), 'The test pour, cut in two') : undefined;
    await shop.run(recordInspection, {
      ...what,
      lotId: shop.id(`lot ${key}`),
      madeOn: shop.on,
      validUntil: validIn === undefined ? undefined : shop.day(validIn),
      photo,
    });
  });
}
