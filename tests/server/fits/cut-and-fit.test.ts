import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cutPiece } from '@/app/_server/cuts/cut-piece';
import type { FitAsk } from '@/app/_server/fits/fit-ask';
import { whatFits } from '@/app/_server/fits/what-fits';
import { changeMarks } from '@/app/_server/shapes/change-marks';
import { measureByStations } from '@/app/_server/shapes/measure-by-stations';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { noteWarp } from '@/app/_server/stock/note-warp';
import { type ReceivePieces, receivePieces } from '@/app/_server/stock/receive-pieces';
import { recordReadings } from '@/app/_server/stock/record-readings';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';

const mm = (length: number) => nanometres(Math.round(length * 1e6));

describe('a top from wood that was cut', () => {
  let test: TestBook;
  let woods = 0;
  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(() => test.remove());

  /** Slabs of a wood of their own, 2000 mm by 500 mm unless told, measured down a line of which `left` lies left. */
  async function slabs(
    count: number,
    { long = 2000, left = 250, right = 250, more = {} as Partial<ReceivePieces> } = {},
  ) {
    woods += 1;
    const species = `Wood ${woods}`;
    const received = must(
      await receivePieces(
        test.book,
        by(),
        aSlab({ count, species, flitch: 'Log', flitchNumber: 1, flags: [], thicknessNm: mm(50), ...more }),
      ),
    );
    const labels = received.pieces.map(({ label }) => label);
    for (const label of labels) {
      const stations = [0, long / 2, long].map((at) => ({ at: mm(at), left: mm(left), right: mm(right) }));
      must(await measureByStations(test.book, by(), { label, chalkLine: { stations }, why: 'Measured' }));
    }
    return { species, labels };
  }

  const line = async (label: string) => {
    const found = await loadPiece(test.book.read, label);
    if (!found) throw new Error(`${label} is gone.`);
    return found;
  };

  async function crossCut(label: string, at: number, become: ('slab' | 'offcut' | 'scrap')[]) {
    const { shape } = await line(label);
    const points = [
      { x: at * 1000, y: 0 },
      { x: at * 1000, y: 1 },
    ];
    const { pieces } = must(
      await cutPiece(test.book, by(), {
        label,
        shapeId: shape?.id ?? null,
        how: { by: 'lines', lines: [{ way: 'cross', points, kerf: 2000 }], bands: 'kept' },
        become: become.map((as) => ({ as, promised: false })),
        why: '',
      }),
    );
    return pieces.map((piece) => piece.label);
  }

  const ask = (length: number, width: number, more: Partial<FitAsk>): FitAsk => ({
    request: {
      shape: { kind: 'rectangle', length: mm(length), width: mm(width), cornerRadius: mm(0) },
      grainWindow: 2,
      edgeAllowance: mm(0),
      trims: { start: mm(0), end: mm(0) },
      filling: false,
    },
    make: { of: 'one' },
    freeOnly: false,
    ...more,
  });
  const fits = async (asked: FitAsk) => unwrap(await whatFits(test.book, asked, { today: TODAY, currency: 'USD' }));
  const pair = { make: { of: 'pair' as const } };

  it('of the halves of a resaw is one shape twice, however the chalk line ran', async () => {
    const { species, labels } = await slabs(1, { left: 450, right: 50 });
    const { shape } = await line(labels[0] ?? '');
    must(
      await cutPiece(test.book, by(), {
        label: labels[0] ?? '',
        shapeId: shape?.id ?? null,
        how: { by: 'resaw', upperNm: 23_000_000, kerfNm: 3_000_000 },
        become: [
          { as: 'slab', promised: false },
          { as: 'slab', promised: false },
        ],
        why: '',
      }),
    );
    const { together, togetherNoes } = await fits(ask(1900, 900, { species, ...pair }));
    expect([together.length, togetherNoes]).toEqual([1, 0]);
    const [only] = together;
    expect(only?.judged.fit.answer).toBe('yes');
    // Laid as they lay in the log, both are one outline.
    expect(only?.members[1]?.outline.ring.length).toBe(only?.members[0].outline.ring.length);
    const left = (nr: 0 | 1) => Math.max(...(only?.members[nr]?.outline.ring ?? []).map(({ y }) => y));
    expect(left(0)).toBe(left(1));
  });

  it('opened like a book is from one place in the log, not from one place on the pieces', async () => {
    const { species, labels } = await slabs(2, { long: 3000 });
    const [, far = ''] = await crossCut(labels[0] ?? '', 1900, ['scrap', 'slab']).then((made) => ['', ...made]);
    expect((await line(far)).lengthNm).toBe(mm(3000 - 1901));
    // The far end of the one lies beside the far end of the other, 1901 mm along.
    const { together } = await fits(ask(1000, 900, { species, ...pair }));
    const [only] = together;
    if (only?.judged.fit.answer !== 'yes' || only.judged.of !== 'pair') throw new Error('It does not fit.');
    expect(only.judged.fit.place.placement.x).toBeGreaterThan(1_900_000);
    const xs = (only.members.find((member) => member.line.label === far)?.outline.ring ?? []).map(({ x }) => x);
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([1_901_000, 3_000_000]);
    // Of what is no longer beside it, no pair is made.
    expect(
      (await fits(ask(1200, 900, { species, ...pair }))).together.filter((e) => e.judged.fit.answer === 'yes'),
    ).toEqual([]);
  });

  it('is looked for in every piece of a sister, the slab as well as the offcut', async () => {
    const { species, labels } = await slabs(2, { long: 3000 });
    await crossCut(labels[1] ?? '', 2600, ['slab', 'offcut']);
    const { together } = await fits(ask(1500, 900, { species, ...pair }));
    expect(together.some(({ judged }) => judged.fit.answer === 'yes')).toBe(true);
  });

  it('leaves out a piece that was measured anew after it was cut, unless it was paired by hand', async () => {
    const { species, labels } = await slabs(2);
    const made = await crossCut(labels[0] ?? '', 200, ['scrap', 'slab']);
    const stations = [0, 900, 1790].map((at) => ({ at: mm(at), left: mm(250), right: mm(250) }));
    must(await measureByStations(test.book, by(), { label: made[0] ?? '', chalkLine: { stations }, why: 'Again' }));
    expect((await fits(ask(1000, 900, { species, ...pair }))).total).toBe(0);
  });

  it('keeps clear of a fine crack that the cut ran through', async () => {
    const { labels } = await slabs(1);
    const crack = [-0.5, 0.5].flatMap((y) => [{ x: 976_000, y: y * 1000 }]);
    const ring = [
      ...crack.map(({ y }) => ({ x: 976_000, y })),
      ...crack.reverse().map(({ y }) => ({ x: 1_024_000, y })),
    ];
    must(
      await changeMarks(test.book, by(), {
        label: labels[0] ?? '',
        add: [
          {
            is: 'defect',
            kind: 'check',
            place: { shape: 'polygon', ring },
            depth: { face: 'through' },
            decision: 'keep-out',
            note: '',
          },
        ],
        remove: [],
        why: '',
      }),
    );
    for (const label of await crossCut(labels[0] ?? '', 1000, ['slab', 'slab'])) {
      const part = await line(label);
      expect(part.marks.defects).toMatchObject([{ kind: 'check', decision: 'keep-out' }]);
      expect(part.facts.flags).toContain('checked');
    }
  });

  it('of a crooked slab is as thin as the slab was, until the part is measured', async () => {
    const { species, labels } = await slabs(1);
    const label = labels[0] ?? '';
    const warp = { cupNm: mm(4), bowNm: mm(7), twistNm: mm(3) };
    must(await noteWarp(test.book, by(), { label, ...warp }));
    const made = await crossCut(label, 1950, ['slab', 'scrap']);
    expect(await line(made[0] ?? '')).toMatchObject(warp);
    const { ranked } = await fits(ask(1800, 400, { species, thickness: mm(40) }));
    expect(ranked[0]?.conditions.map(({ code }) => code)).toContain('too-thin');
  });

  it('dry by a day still says that it was read long ago', async () => {
    const { species, labels } = await slabs(1, { more: { reading: undefined } });
    must(
      await recordReadings(test.book, by(), {
        label: labels[0] ?? '',
        takenOn: day('2024-11-25'),
        meter: '',
        meterKind: 'pin',
        speciesSetting: '',
        woodTenthsC: null,
        correctsItself: false,
        readings: [{ mcTenths: 80, spot: '', depthNm: null, alongNm: null, acrossNm: null }],
        why: '',
      } as never),
    );
    const codes = async (more: Partial<FitAsk>) =>
      (await fits(ask(1800, 400, { species, mostTenths: 100, ...more }))).ranked[0]?.conditions.map(({ code }) => code);
    expect(await codes({})).toContain('reading-old');
    expect(await codes({ dryBy: day('2026-12-24') })).toContain('reading-old');
  });

  it('is a sheet where its kind was asked for by name, flat as it comes', async () => {
    must(
      await receivePieces(
        test.book,
        by(),
        aSlab({ form: 'sheet', species: 'Birch plywood', flags: [], thicknessNm: mm(18), reading: undefined }),
      ),
    );
    const { ranked } = await fits(ask(1000, 300, { species: 'Birch plywood', thickness: mm(18), mostTenths: 100 }));
    expect(ranked).toHaveLength(1);
    expect(ranked[0]?.conditions).toEqual([]);
  });
});
