import { takeBoards } from '@/app/_server/cuts/take-boards';
import type { DemoAct } from '@/app/_server/demo/demo-shop';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { receiveBoards } from '@/app/_server/stock/receive-boards';

const MM = 1_000_000;
const MM3_PER_BOARD_FOOT = 2_359_737.216;

/** Millimetres, as they came off the lorry: width, then length. */
const TALLY: readonly (readonly [width: number, length: number])[] = [
  [165, 2440],
  [190, 2440],
  [152, 2440],
  [210, 2750],
  [178, 2750],
  [235, 2750],
  [160, 3050],
  [196, 3050],
  [182, 3050],
  [224, 3050],
  [171, 2130],
  [205, 2130],
  [188, 2130],
  [248, 3360],
  [176, 3360],
  [193, 2440],
  [158, 2440],
  [214, 2750],
];

/** A pack of cherry boards that was tallied as it came in, and the boards that went out of it since. */
export const DEMO_BOARDS: readonly DemoAct[] = [
  {
    daysAgo: 61,
    hour: 9,
    by: 'tobi',
    async act(shop) {
      const { pieces } = await shop.run(receiveBoards, {
        as: 'pack',
        species: 'Wild cherry',
        thicknessNm: 25.4 * MM,
        quarters: 4,
        surfacing: 'rough',
        flags: [],
        flitch: '',
        note: 'Kiln-dried; two boards with a gum streak.',
        origin: 'Vosges, France',
        boards: TALLY.map(([width, length]) => ({ widthNm: width * MM, lengthNm: length * MM })),
        costMinor: 73_850,
        sellerName: 'Harrow Quay timber',
        sellerVolumeMm3: Math.round(103 * MM3_PER_BOARD_FOOT),
        receivedOn: shop.on,
        placeLabel: shop.label('board-rack'),
        reading: { mcTenths: 92, meter: 'Pin meter, insulated pins', spot: 'third board, mid-length' },
      });
      shop.keep('cherry pack', pieces[0]?.label ?? '');
    },
  },
  taken(33, [3, 9, 13], 'Sides of the bench box'),
  taken(8, [0, 1], 'Lippings'),
];

function taken(daysAgo: number, numbers: number[], why: string): DemoAct {
  return {
    daysAgo,
    hour: 13,
    by: 'maren',
    async act(shop) {
      const label = shop.label('cherry pack');
      const pack = await loadPiece(shop.book.read, label);
      const boardIds = numbers.flatMap((nr) => pack?.boards[nr]?.id ?? []);
      await shop.run(takeBoards, { label, boardIds, why });
    },
  };
}
