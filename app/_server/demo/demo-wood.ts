import type { DemoAct } from '@/app/_server/demo/demo-shop';
import { drawWoodFace, type WoodColours } from '@/app/_server/demo/draw-wood-face';
import { keepDrawing } from '@/app/_server/demo/keep-drawing';
import { addPhoto } from '@/app/_server/stock/add-photo';
import { changeHold } from '@/app/_server/stock/change-hold';
import { givePiece } from '@/app/_server/stock/give-piece';
import type { SoldFacts } from '@/app/_server/stock/piece-fields';
import { type ReceivePieces, receivePieces } from '@/app/_server/stock/receive-pieces';
import { recordReadings } from '@/app/_server/stock/record-readings';

const WALNUT: WoodColours = { heart: '#6b4a34', sap: '#cdb48e', line: '#3b2517', bark: '#2b1d14' };
const ELM: WoodColours = { heart: '#a9794e', sap: '#d8bd91', line: '#6f4726', bark: '#3d2c1f' };
const METER = 'Pin meter, insulated pins';
const MM = 1_000_000;

type Row = {
  key: string;
  daysAgo: number;
  /** Millimetres: length, the three widths, thickness. */
  size: [length: number, start: number, middle: number, end: number, thickness: number];
  place: string;
  /** Moisture in tenths of a per cent when it arrived. */
  mc?: number;
} & Pick<ReceivePieces, 'form' | 'species'> &
  Partial<Pick<ReceivePieces, 'count' | 'flags' | 'flitch' | 'flitchNumber' | 'costMinor' | 'note' | keyof SoldFacts>>;

const walnut = (nr: number, size: Row['size'], more: Partial<Row> = {}): Row => ({
  key: `walnut ${nr}`,
  daysAgo: 120,
  form: 'slab',
  species: 'Walnut',
  flitch: 'Thornwick W',
  flitchNumber: nr,
  size,
  place: 'slab-rack-a',
  mc: 164,
  costMinor: 86_000,
  origin: 'Thornwick estate, windblown',
  sapwoodNm: 34 * MM,
  ...more,
  flags: ['live-edge-left', 'live-edge-right', ...(more.flags ?? [])],
});
const elm = (nr: number, size: Row['size'], more: Partial<Row> = {}): Row => ({
  key: `elm ${nr}`,
  daysAgo: 24,
  form: 'slab',
  species: 'Wych elm',
  flitch: 'Rill bank E',
  flitchNumber: nr,
  size,
  place: 'slab-rack-b',
  mc: 236,
  costMinor: 54_000,
  origin: 'Rill bank, a hedgerow tree',
  sapwoodNm: 28 * MM,
  flags: ['live-edge-left', 'live-edge-right'],
  ...more,
});

const ash = (nr: number, size: Row['size'], flags: Row['flags'] = []): Row => ({
  key: `ash slab ${nr}`,
  daysAgo: 100,
  form: 'slab',
  species: 'Ash',
  flitch: 'Culver lane A',
  flitchNumber: nr,
  size,
  place: 'slab-rack-b',
  mc: 128,
  costMinor: 31_500,
  origin: 'Culver lane',
  flags: ['live-edge-left', 'live-edge-right', ...flags],
});

const ROWS: Row[] = [
  walnut(1, [3050, 470, 420, 505, 58], { flags: ['twisted'], costMinor: 61_000 }),
  walnut(2, [3120, 640, 585, 670, 58], { note: 'Best figure of the flitch, crotch at the wide end.' }),
  walnut(3, [3140, 760, 715, 790, 58], { flags: ['checked'] }),
  walnut(4, [3140, 780, 730, 815, 58], {
    flags: ['broken', 'strapped'],
    note: 'Parted along the heart; two straps hold it.',
  }),
  walnut(5, [3410, 745, 700, 770, 58]),
  walnut(6, [3100, 610, 560, 655, 58]),
  elm(1, [2480, 560, 540, 610, 65]),
  elm(2, [2510, 690, 655, 720, 65], { flags: ['live-edge-left', 'live-edge-right', 'checked'] }),
  elm(3, [2500, 700, 640, 745, 65]),
  ash(1, [2580, 520, 470, 560, 55]),
  ash(2, [2600, 585, 530, 610, 55], ['checked']),
  {
    key: 'oak slab',
    daysAgo: 12,
    form: 'slab',
    species: 'European oak',
    size: [2210, 520, 505, 540, 52],
    place: 'slab-barn',
    flags: ['live-edge-left'],
    costMinor: 39_000,
    note: 'From a farm sale; history unknown.',
  },
  {
    key: 'sycamore slab',
    daysAgo: 66,
    form: 'slab',
    species: 'Sycamore',
    size: [1980, 430, 415, 460, 45],
    place: 'slab-rack-b',
    mc: 118,
    flags: ['live-edge-right'],
    costMinor: 24_500,
    note: 'Small round holes with fresh dust.',
  },
  {
    key: 'oak boards',
    daysAgo: 80,
    form: 'board',
    species: 'European oak',
    count: 6,
    size: [2440, 185, 185, 185, 27],
    place: 'board-rack',
    mc: 96,
    costMinor: 4_600,
    quarters: 4,
    surfacing: 'rough',
    origin: 'Berry hill, Germany',
  },
  {
    key: 'ash boards',
    daysAgo: 19,
    form: 'board',
    species: 'Ash',
    count: 4,
    size: [2800, 210, 205, 200, 41],
    place: 'board-rack',
    mc: 91,
    costMinor: 5_900,
    quarters: 6,
    surfacing: 'rough',
  },
  {
    key: 'maple board',
    daysAgo: 19,
    form: 'board',
    species: 'Maple',
    size: [2100, 160, 160, 160, 33],
    place: 'board-rack',
    mc: 88,
    flags: ['twisted'],
    costMinor: 3_800,
  },
  {
    key: 'birch ply',
    daysAgo: 52,
    form: 'sheet',
    species: 'Birch plywood',
    count: 3,
    size: [2440, 1220, 1220, 1220, 18],
    place: 'sheet-bay',
    costMinor: 6_400,
    grain: 'length',
    faceA: 'BB',
    faceB: 'CP, plugged',
    origin: 'Latvia',
  },
  {
    key: 'oak mdf',
    daysAgo: 52,
    form: 'sheet',
    species: 'Oak-veneered MDF',
    size: [2440, 1220, 1220, 1220, 19],
    place: 'sheet-bay',
    costMinor: 7_900,
    grain: 'length',
    faceA: 'Crown-cut oak, A',
    faceB: 'Balancing veneer',
  },
  {
    key: 'white board',
    daysAgo: 52,
    form: 'sheet',
    species: 'Melamine-faced chipboard',
    size: [2800, 2070, 2070, 2070, 18],
    place: 'sheet-bay',
    costMinor: 5_600,
    grain: 'none',
    faceA: 'White, pearl',
    faceB: 'White, pearl',
  },
  {
    key: 'walnut offcuts',
    daysAgo: 48,
    form: 'offcut',
    species: 'Walnut',
    count: 3,
    size: [520, 210, 195, 180, 52],
    place: 'offcut-bin',
    mc: 94,
    note: 'From the Harbour table.',
  },
  {
    key: 'ply offcut',
    daysAgo: 30,
    form: 'offcut',
    species: 'Birch plywood',
    size: [1220, 600, 600, 600, 18],
    place: 'offcut-bin',
    grain: 'length',
    faceA: 'BB',
    faceB: 'CP, plugged',
  },
];

/** Readings over the weeks: days ago, and tenths of a per cent for each piece. */
const READINGS: [daysAgo: number, mc: Record<string, number>][] = [
  [98, { 'walnut 1': 149, 'walnut 2': 151, 'walnut 3': 153, 'walnut 4': 150, 'walnut 5': 152, 'walnut 6': 147 }],
  [77, { 'walnut 2': 136, 'walnut 5': 138, 'walnut 6': 131 }],
  [56, { 'walnut 1': 118, 'walnut 2': 121, 'walnut 3': 124, 'walnut 4': 122, 'walnut 5': 123, 'walnut 6': 116 }],
  [28, { 'walnut 2': 106, 'walnut 3': 111, 'walnut 5': 107, 'walnut 6': 101, 'sycamore slab 1': 109 }],
  [14, { 'elm 1': 224, 'elm 2': 229, 'elm 3': 226, 'oak boards 1': 92, 'oak boards 2': 94 }],
  [5, { 'walnut 2': 96, 'walnut 3': 104, 'walnut 5': 95, 'walnut 6': 92, 'elm 2': 218 }],
];

/** Wood through the door, its readings, its photos, and what was promised, held and taken. */
export const DEMO_WOOD: readonly DemoAct[] = [
  ...ROWS.map(
    (row): DemoAct => ({
      daysAgo: row.daysAgo,
      hour: 9,
      by: 'tobi',
      async act(shop) {
        const [length, start, middle, end, thickness] = row.size;
        const { pieces } = await shop.run(receivePieces, {
          form: row.form,
          species: row.species,
          count: row.count ?? 1,
          lengthNm: length * MM,
          widthStartNm: start * MM,
          widthMiddleNm: middle * MM,
          widthEndNm: end * MM,
          thicknessNm: thickness * MM,
          flags: row.flags ?? [],
          flitch: row.flitch ?? '',
          flitchNumber: row.flitchNumber,
          costMinor: row.costMinor,
          receivedOn: shop.on,
          placeLabel: shop.label(row.place),
          note: row.note ?? '',
          origin: row.origin,
          sapwoodNm: row.sapwoodNm,
          quarters: row.quarters,
          surfacing: row.surfacing,
          grain: row.grain,
          faceA: row.faceA,
          faceB: row.faceB,
          reading: row.mc === undefined ? undefined : { mcTenths: row.mc, meter: METER, spot: 'mid-face' },
        });
        for (const [nr, piece] of pieces.entries()) {
          const name = row.flitchNumber === undefined ? `${row.key} ${nr + 1}` : row.key;
          shop.keep(name, piece.label);
          shop.keep(`stock ${name}`, piece.stockId);
        }
      },
    }),
  ),
  ...READINGS.map(
    ([daysAgo, mc]): DemoAct => ({
      daysAgo,
      hour: 14,
      by: 'tobi',
      async act(shop) {
        for (const [key, mcTenths] of Object.entries(mc)) {
          await shop.run(recordReadings, {
            label: shop.label(key),
            takenOn: shop.on,
            meter: METER,
            readings: [{ mcTenths, spot: 'mid-face, 300 mm from the end' }],
          });
        }
      },
    }),
  ),
  photographed(119, 'walnut 2', 2, WALNUT, 'Slab 2, sawn face'),
  photographed(119, 'walnut 3', 3, WALNUT, 'Slab 3, check at the butt end'),
  photographed(23, 'elm 2', 7, ELM, 'Slab 2, as it came off the lorry'),
  given(72, 'walnut 1', 'take', 'harbour'),
  given(27, 'walnut 5', 'promise', 'bar'),
  given(20, 'walnut 6', 'promise', 'desk'),
  given(11, 'ash boards 4', 'take', 'bench'),
  {
    daysAgo: 26,
    hour: 10,
    by: 'maren',
    act: (shop) =>
      shop.run(changeHold, {
        stockId: shop.id('stock sycamore slab 1'),
        hold: 'quarantine',
        why: 'Live beetle: kept apart until it has been treated.',
      }),
  },
];

function photographed(daysAgo: number, key: string, seed: number, colours: WoodColours, caption: string): DemoAct {
  return {
    daysAgo,
    hour: 10,
    by: 'tobi',
    async act(shop) {
      const photo = await keepDrawing(drawWoodFace(seed, colours, key === 'walnut 3' || key === 'elm 2'), caption);
      await shop.run(addPhoto, { stockId: shop.id(`stock ${key}`), photo });
    },
  };
}

function given(daysAgo: number, key: string, act: 'promise' | 'take', job: string): DemoAct {
  return {
    daysAgo,
    hour: 11,
    by: 'maren',
    act: (shop) => shop.run(givePiece, { label: shop.label(key), act, jobId: shop.id(`job ${job}`) }),
  };
}
