import { describe, expect, it } from 'vitest';
import { boardsSchema, woodArrivalSchema } from '@/app/(shop)/arrive/wood/boards-schema';
import { sayTally } from '@/app/(shop)/arrive/wood/say-tally';
import type { TypedWood } from '@/app/(shop)/arrive/wood/schema';
import { quartersTyped, soldThickness } from '@/app/(shop)/arrive/wood/sold-thickness';
import { NO_TALLY, readTallyLine, splitTally } from '@/app/(shop)/arrive/wood/tally';
import { TYPING } from './card-of-a-test';

const INCH = 25_400_000;
const IMPERIAL = { ...TYPING, prefer: 'imperial' as const };
const PACK: TypedWood = {
  form: 'pack',
  species: 'Walnut',
  count: '1',
  length: '',
  widths: 'one',
  width: '',
  widthStart: '',
  widthMiddle: '',
  widthEnd: '',
  thickness: '8/4',
  flags: [],
  flitch: '',
  flitchNumber: '',
  cost: '',
  receivedOn: '',
  placeLabel: '',
  note: '',
  origin: '',
  sapwood: '',
  quarters: '8',
  surfacing: 'rough',
  grain: '',
  faceA: '',
  faceB: '',
  tally: { ...NO_TALLY, lines: [{ width: '6 1/4', length: '8' }] },
  moisture: '',
  meter: '',
  spot: '',
};
const pack = (tally: Partial<TypedWood['tally']>): TypedWood => ({ ...PACK, tally: { ...PACK.tally, ...tally } });
const said = (typed: TypedWood) =>
  Object.fromEntries(
    (boardsSchema(IMPERIAL).safeParse(typed).error?.issues ?? []).map(({ path, message }) => [path.join('.'), message]),
  );

describe('a line of a tally', () => {
  it('is inches wide and feet long where inches are preferred, a unit of its own going before', () => {
    const read = (width: string, length: string) => readTallyLine({ width, length }, 'imperial');
    expect(read('6 1/4', '8')).toMatchObject({ ok: true, board: { width: 6.25 * INCH, length: 96 * INCH } });
    expect(read('6 1/4', '8 1/2')).toMatchObject({ ok: true, board: { length: 102 * INCH } });
    expect(read('6', '96"')).toMatchObject({ ok: true, board: { length: 96 * INCH } });
    expect(read('150 mm', '2.4 m')).toMatchObject({ ok: true, board: { width: 150e6, length: 2400e6 } });
  });

  it('is in millimetres both ways where those are preferred', () => {
    const read = readTallyLine({ width: '150', length: '2400' }, 'metric');
    expect(read).toMatchObject({ ok: true, board: { width: 150e6, length: 2400e6 } });
  });

  it('names the measure that does not read, and one that was turned round', () => {
    expect(readTallyLine({ width: 'wide', length: '8' }, 'imperial')).toMatchObject({ ok: false, field: 'width' });
    expect(readTallyLine({ width: '6', length: '' }, 'imperial')).toMatchObject({ ok: false, field: 'length' });
    expect(readTallyLine({ width: '2400', length: '150' }, 'metric')).toMatchObject({ ok: false, field: 'length' });
  });
});

describe('a written tally', () => {
  it('is split into a line for each board, whatever stands between the measures', () => {
    const text = '6 1/4 x 8\n\n5 1/2×10\r\n7 by 12\n6;8\n6\t8\n150 2400';
    expect(splitTally(text).map(({ width, length }) => `${width}|${length}`)).toEqual([
      '6 1/4|8',
      '5 1/2|10',
      '7|12',
      '6|8',
      '6|8',
      '150|2400',
    ]);
  });

  it('has as many boards as its line says, and keeps a line that it cannot split', () => {
    expect(splitTally('150 x 2400 x 3')).toHaveLength(3);
    expect(splitTally('two of the wide ones')).toEqual([{ width: 'two of the wide ones', length: '' }]);
  });

  it('is added up as it is typed, and says how many lines are not read', () => {
    const lines = [...Array(4).fill({ width: '6', length: '8' }), { width: 'x', length: '' }];
    const sold = { thickness: '8/4', quarters: '8', surfacing: 'rough' };
    expect(sayTally(lines, sold, 'imperial')).toBe('4 boards, 32 board feet at 8/4, 0.076 m³. 1 line is not read.');
    expect(sayTally(lines, { ...sold, thickness: '' }, 'imperial')).toContain('16 square feet surface measure');
    expect(sayTally([], sold, 'imperial')).toBe('No board yet.');
  });
});

describe('a tally where it is written', () => {
  it('reads into boards of exact sizes, and one board foot is 144 cubic inches', () => {
    const read = boardsSchema(IMPERIAL).parse(pack({ sellerBoardFeet: '10,5', sellerName: 'Mill' }));
    expect(read).toMatchObject({ as: 'pack', boards: [{ widthNm: 6.25 * INCH, lengthNm: 96 * INCH }], quarters: 8 });
    expect(read.sellerVolumeMm3).toBe(Math.round(10.5 * 144 * 25.4 ** 3));
  });

  it('marks the wrong lines by number, what is half typed, and what is missing, all at once', () => {
    const lines = [
      { width: '6', length: '8' },
      { width: 'six', length: '8' },
      { width: '7', length: '' },
    ];
    expect(said({ ...pack({ lines }), species: '', thickness: '' })).toMatchObject({
      species: 'Say what wood it is.',
      thickness: 'How thick are they? 8/4 will do.',
      tally: 'Lines 2, 3 are not read. Put right what is marked, or remove it.',
    });
    expect(said(pack({ width: '6' })).tally).toContain('half typed');
    expect(said(pack({ lines: [] })).tally).toContain('Tally the boards first');
    expect(said(pack({ sellerBoardFeet: 'many' })).sellerBoardFeet).toContain('board feet');
  });

  it('is read by its form: a pack has no size of its own to be asked for', () => {
    expect(woodArrivalSchema(IMPERIAL).safeParse(PACK).success).toBe(true);
    expect(woodArrivalSchema(IMPERIAL).safeParse({ ...PACK, form: 'board' }).success).toBe(false);
  });
});

describe('the thickness of wood sold by the quarter', () => {
  it('is the published one until somebody measures another', () => {
    const rough = { quarters: '8', surfacing: 'rough' };
    const surfaced = { quarters: '8', surfacing: 'S2S' };
    const text = soldThickness({ quarters: '', surfacing: '', thickness: '' }, rough);
    expect(text).toBe('8/4');
    // 8/4 surfaced two sides is 1 3/4 in (NHLA rules book, as public size charts print it).
    expect(soldThickness({ ...rough, thickness: text }, surfaced)).toMatch(/^1 3\/4/);
    expect(soldThickness({ ...rough, thickness: '52 mm' }, surfaced)).toBe('52 mm');
  });

  it('names its quarters where it is typed so', () => {
    expect(quartersTyped(' 10/4 ')).toBe('10');
    expect(quartersTyped('9/4')).toBeUndefined();
    expect(quartersTyped('2 in')).toBeUndefined();
  });
});
