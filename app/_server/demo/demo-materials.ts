import type { DemoAct, Person } from '@/app/_server/demo/demo-shop';
import { drawPourCup } from '@/app/_server/demo/draw-pour-cup';
import { keepDrawing } from '@/app/_server/demo/keep-drawing';
import { changeHold } from '@/app/_server/stock/change-hold';
import { discard } from '@/app/_server/stock/discard';
import { moveStock } from '@/app/_server/stock/move-stock';
import { noteCondition } from '@/app/_server/stock/note-condition';
import { openContainer } from '@/app/_server/stock/open-container';
import { type RecordInspection, recordInspection } from '@/app/_server/stock/record-inspection';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import type { Condition } from '@/shared/shelf-life/types/container-facts';

const act = (daysAgo: number, hour: number, by: Person, work: DemoAct['act']): DemoAct => ({
  daysAgo,
  hour,
  by,
  act: work,
});
const opened = (daysAgo: number, key: string, by: Person = 'maren') =>
  act(daysAgo, 10, by, (shop) =>
    shop.run(openContainer, { label: shop.label(key), opened: { on: shop.on, sureness: 'known' } }),
  );
const seen = (daysAgo: number, key: string, conditions: Condition[], why: string, by: Person = 'maren') =>
  act(daysAgo, 11, by, (shop) => shop.run(noteCondition, { label: shop.label(key), conditions, why }));
const weighed = (daysAgo: number, key: string, left: number) =>
  act(daysAgo, 15, 'tobi', (shop) => shop.run(weighContainer, { label: shop.label(key), left, why: 'Stocktake' }));

/** What became of what was delivered: opened, seen, weighed, moved, held, inspected, thrown away. */
export const DEMO_MATERIALS: readonly DemoAct[] = [
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
    shop.run(changeHold, {
      stockId: shop.id('lot deep-b recalled'),
      hold: 'recalled',
      why: 'Letter from the maker: wrong label on part of this lot.',
    }),
  ),
  act(58, 9, 'maren', (shop) =>
    shop.run(changeHold, { stockId: shop.id('stock coat-b new 2'), hold: 'quarantine', why: 'Lid was not on tight.' }),
  ),
  act(57, 9, 'maren', (shop) =>
    shop.run(changeHold, {
      stockId: shop.id('stock coat-b new 2'),
      hold: 'free',
      why: 'Looked at: clear, pours well, no skin.',
    }),
  ),
  inspection(
    10,
    'pva past',
    { kind: 'inspection', passed: true, method: 'Two blocks glued and broken', note: 'Wood tore, not the glue line.' },
    80,
  ),
  inspection(
    16,
    'coat-b past',
    {
      kind: 'test-pour',
      passed: true,
      method: '100 g with KA-40 in a cup, 24 hours at 21 °C',
      note: 'Hard right through, no tack, no change of colour.',
    },
    undefined,
    true,
  ),
  inspection(13, 'shellac old', {
    kind: 'inspection',
    passed: false,
    method: 'A drop on glass',
    note: 'Still sticky after two hours.',
  }),
  inspection(20, 'deep-a old', {
    kind: 'test-pour',
    passed: true,
    method: '100 g in a cup, 7 days',
    note: 'Clear and hard.',
  }),
  act(4, 16, 'tobi', (shop) =>
    shop.run(discard, {
      label: shop.label('contact past 1'),
      why: 'Past its use-by; taken to the tip with the solvents.',
    }),
  ),
];

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
