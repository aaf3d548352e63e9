import { cutPiece } from '@/app/_server/cuts/cut-piece';
import { pairPieces } from '@/app/_server/cuts/pair-pieces';
import { growChalkLine } from '@/app/_server/demo/demo-chalk';
import { DEMO_MARKS } from '@/app/_server/demo/demo-marks';
import type { DemoAct } from '@/app/_server/demo/demo-shop';
import { measureByStations } from '@/app/_server/shapes/measure-by-stations';
import { noteSellerFigures } from '@/app/_server/shapes/seller-figures';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { noteSawn } from '@/app/_server/stock/note-sawn';
import { noteWarp } from '@/app/_server/stock/note-warp';
import type { NamedLine } from '@/shared/outline/cut-line';
import { nanometres } from '@/shared/units/nanometres';

const MM = 1_000_000;
const mm = (length: number) => nanometres(length * MM);
const BLADE_UM = 3200;

type Measured = [daysAgo: number, key: string, seed: number, grown: Parameters<typeof growChalkLine>[1]];

const MEASURED: Measured[] = [
  [118, 'walnut 2', 2, { length: 3120, widths: [640, 585, 670], bend: 34 }],
  [118, 'walnut 3', 3, { length: 3140, widths: [760, 715, 790], bend: 28 }],
  [118, 'walnut 4', 4, { length: 3140, widths: [780, 730, 815], bend: 18 }],
  [118, 'walnut 5', 5, { length: 3410, widths: [745, 700, 770], bend: 30 }],
  [118, 'walnut 6', 6, { length: 3100, widths: [610, 560, 655], bend: 36 }],
  [99, 'ash slab 1', 11, { length: 2580, widths: [520, 470, 560], bend: -22 }],
  [99, 'ash slab 2', 12, { length: 2600, widths: [585, 530, 610], bend: -26 }],
  [23, 'elm 1', 21, { length: 2480, widths: [560, 540, 610], bend: 40 }],
  [23, 'elm 2', 22, { length: 2510, widths: [690, 655, 720], bend: 44 }],
  [23, 'elm 3', 23, { length: 2500, widths: [700, 640, 745], bend: 46 }],
  [11, 'oak slab 1', 31, { length: 2210, widths: [520, 505, 540], live: { left: true, right: false } }],
];

/** Slabs measured down a chalk line, marked, paired for a bookmatch, and one cut up. */
export const DEMO_SLABS: readonly DemoAct[] = [
  ...MEASURED.map(
    ([daysAgo, key, seed, grown]): DemoAct => ({
      daysAgo,
      hour: 11,
      by: 'tobi',
      act: (shop) =>
        shop.run(measureByStations, { label: shop.label(key), chalkLine: growChalkLine(seed, grown), why: '' }),
    }),
  ),
  ...DEMO_MARKS,
  {
    daysAgo: 117,
    hour: 15,
    by: 'maren',
    act: (shop) =>
      shop.run(noteSellerFigures, {
        label: shop.label('walnut 2'),
        name: 'Thornwick sawmill',
        lengthNm: mm(3150),
        widthNm: mm(660),
        thicknessNm: mm(60),
        volumeMm3: 125_000_000,
        massMg: 82_000_000,
        mcTenths: 120,
      }),
  },
  {
    daysAgo: 40,
    hour: 9,
    by: 'tobi',
    async act(shop) {
      await shop.run(noteWarp, { label: shop.label('walnut 2'), cupNm: mm(4), bowNm: mm(7), twistNm: mm(3) });
    },
  },
  {
    daysAgo: 22,
    hour: 15,
    by: 'tobi',
    async act(shop) {
      await shop.run(noteSawn, { label: shop.label('walnut 2'), sawn: 'mixed' });
      await shop.run(noteSawn, { label: shop.label('elm 2'), sawn: 'flat' });
      await shop.run(pairPieces, { label: shop.label('elm 2'), withLabel: shop.label('elm 3') });
    },
  },
  {
    daysAgo: 60,
    hour: 10,
    by: 'maren',
    async act(shop) {
      const label = shop.label('ash slab 2');
      const line = await loadPiece(shop.book.read, label);
      const { pieces } = await shop.run(cutPiece, {
        label,
        shapeId: line?.shape?.id ?? null,
        how: { by: 'lines', lines: [across(640), across(2340)], bands: 'kept' },
        become: [
          { as: 'offcut', promised: false },
          { as: 'slab', promised: false },
          { as: 'scrap', promised: false },
        ],
        why: 'Bench seat from the middle; the butt end was checked through.',
      });
      for (const [nr, piece] of pieces.entries()) shop.keep(`ash part ${nr + 1}`, piece.label);
    },
  },
];

/** A saw cut square across, so far along in millimetres. */
function across(along: number): NamedLine {
  const x = along * 1000;
  return {
    way: 'cross',
    points: [
      { x, y: 0 },
      { x, y: 1000 },
    ],
    kerf: BLADE_UM,
  };
}
