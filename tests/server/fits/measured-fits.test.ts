import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { FitAsk } from '@/app/_server/fits/fit-ask';
import { slabToSearch } from '@/app/_server/fits/slab-to-search';
import { whatFits } from '@/app/_server/fits/what-fits';
import { changeMarks } from '@/app/_server/shapes/change-marks';
import { measureByStations } from '@/app/_server/shapes/measure-by-stations';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { receiveBoards } from '@/app/_server/stock/receive-boards';
import { type ReceivePieces, receivePieces } from '@/app/_server/stock/receive-pieces';
import { readRequest, regionFor } from '@/shared/fit/fit-request';
import { holdsShape } from '@/shared/fit/holds-shape';
import type { NewMark } from '@/shared/outline/piece-marks';
import type { ChalkLine } from '@/shared/outline/station';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';

const mm = (length: number) => nanometres(Math.round(length * 1e6));
const inches = (count: number) => nanometres(count * 25_400_000);
const um = (length: number) => Math.round(length * 1000);
const chalk = (...stations: [number, number, number][]): ChalkLine => ({
  stations: stations.map(([at, left, right]) => ({ at: mm(at), left: mm(left), right: mm(right) })),
});
const knot = (x: number, y: number, decision: 'keep-out' | 'fill'): NewMark => ({
  is: 'defect',
  kind: 'knot',
  place: { shape: 'circle', centre: { x: um(x), y: um(y) }, radius: um(60) },
  depth: { face: 'through' },
  decision,
  note: '',
});

describe('a top from measured slabs', () => {
  let test: TestBook;
  const receive = async (more: Partial<ReceivePieces>) =>
    must(await receivePieces(test.book, by(), aSlab(more))).pieces.map(({ label }) => label);
  const measure = async (label: string, chalkLine: ChalkLine) =>
    must(await measureByStations(test.book, by(), { label, chalkLine, why: 'Measured' }));
  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(() => test.remove());

  /** Nothing lost at edges and ends, so that the numbers are those of the wood. */
  const ask = (
    length: number,
    width: number,
    more: Partial<FitAsk> = {},
    request: Partial<FitAsk['request']> = {},
  ) => ({
    request: {
      shape: { kind: 'rectangle' as const, length: mm(length), width: mm(width), cornerRadius: mm(0) },
      grainWindow: 5,
      edgeAllowance: mm(0),
      trims: { start: mm(0), end: mm(0) },
      filling: false,
      ...request,
    },
    make: { of: 'one' as const },
    freeOnly: false,
    ...more,
  });
  const fits = async (asked: FitAsk) => unwrap(await whatFits(test.book, asked, { today: TODAY, currency: 'USD' }));

  it('says how many packs of that wood it does not look at', async () => {
    const pack = { as: 'pack' as const, thicknessNm: mm(50), quarters: 8, surfacing: 'rough' as const, flags: [] };
    const rest = {
      flitch: '',
      note: '',
      origin: '',
      receivedOn: TODAY,
      boards: [{ widthNm: mm(150), lengthNm: mm(2400) }],
    };
    must(await receiveBoards(test.book, by(), { ...pack, ...rest, species: 'Ash' }));
    must(await receiveBoards(test.book, by(), { ...pack, ...rest, species: 'Lime' }));
    expect((await fits(ask(2000, 600, { species: 'Ash' }))).packs).toBe(1);
    expect((await fits(ask(2000, 600))).packs).toBe(2);
  });

  it('goes by the outline, not by three widths that hide a waist', async () => {
    const [label = ''] = await receive({
      species: 'Ash',
      lengthNm: mm(2400),
      widthStartNm: mm(700),
      widthMiddleNm: mm(700),
      widthEndNm: mm(700),
    });
    const asked = ask(2200, 600, { species: 'Ash' });
    expect((await fits(asked)).ranked[0]?.judged.fit.answer).toBe('yes');
    await measure(label, chalk([0, 350, 350], [800, 250, 270], [1600, 350, 350], [2400, 350, 350]));
    const [only] = (await fits(asked)).ranked;
    if (only?.judged.fit.answer !== 'nearly') throw new Error('Not nearly.');
    // The waist is 520 mm wide: 80 mm are missing, and the place is where the waist is.
    expect(only.judged.fit.missing.tooNarrow?.by).toBeGreaterThanOrEqual(mm(80));
    expect(only.judged.fit.missing.tooNarrow?.by).toBeLessThan(mm(84));
    expect(Math.abs((only.judged.fit.missing.tooNarrow?.at ?? 0) - mm(800))).toBeLessThan(mm(30));
  });

  it('keeps clear of what is to be kept out, and lies over what is to be filled where that is allowed', async () => {
    const [label = ''] = await receive({
      species: 'Cherry',
      lengthNm: mm(2400),
      widthStartNm: mm(700),
      widthMiddleNm: mm(700),
      widthEndNm: mm(700),
    });
    await measure(label, chalk([0, 350, 350], [2400, 350, 350]));
    const asked = ask(2000, 600, { species: 'Cherry' });
    const answer = async (filling = false) =>
      (await fits({ ...asked, request: { ...asked.request, filling } })).ranked[0]?.judged.fit.answer;
    expect(await answer()).toBe('yes');
    const { added } = must(
      await changeMarks(test.book, by(), { label, add: [knot(1200, 0, 'fill')], remove: [], why: '' }),
    );
    expect(await answer(true)).toBe('yes');
    expect(await answer(false)).not.toBe('yes');
    must(await changeMarks(test.book, by(), { label, add: [knot(1200, 0, 'keep-out')], remove: added, why: '' }));
    expect(await answer(true)).not.toBe('yes');
  });

  it('trims past end checks where they run deeper than the trim asked for', async () => {
    const [label = ''] = await receive({
      species: 'Beech',
      lengthNm: mm(2400),
      widthStartNm: mm(700),
      widthMiddleNm: mm(700),
      widthEndNm: mm(700),
    });
    await measure(label, chalk([0, 350, 350], [2400, 350, 350]));
    const asked = ask(2200, 600, { species: 'Beech' });
    expect((await fits(asked)).ranked[0]?.judged.fit.answer).toBe('yes');
    const check: NewMark = { is: 'end-check', end: 'start', depth: mm(260), note: '' };
    must(await changeMarks(test.book, by(), { label, add: [check], remove: [], why: '' }));
    const [only] = (await fits(asked)).ranked;
    if (only?.judged.fit.answer !== 'nearly') throw new Error('Not nearly.');
    // 2400 mm less 260 mm leave 2140 mm: 60 mm are missing.
    expect(only.judged.fit.missing.tooShort?.by).toBeGreaterThanOrEqual(mm(60));
    expect(only.judged.fit.missing.tooShort?.by).toBeLessThan(mm(62));
  });

  it('of heartwood only, loses the sapwood at both edges, and says where nobody measured it', async () => {
    const [label = ''] = await receive({
      species: 'Walnut',
      lengthNm: mm(2400),
      widthStartNm: mm(700),
      widthMiddleNm: mm(700),
      widthEndNm: mm(700),
    });
    const heart = ask(2000, 600, { species: 'Walnut' }, { heartwoodOnly: true });
    const [unknown] = (await fits(heart)).ranked;
    expect(unknown?.judged.fit.answer).toBe('yes');
    expect(unknown?.conditions.map(({ code }) => code)).toContain('sapwood-unknown');
    await test.book.write((tx) =>
      tx.piece.updateMany({ where: { stock: { label } }, data: { sapwoodNm: BigInt(mm(60)) } }),
    );
    const [known] = (await fits(heart)).ranked;
    // 700 mm less twice 60 mm leave 580 mm.
    expect(known?.judged.fit.answer).toBe('nearly');
    expect(known?.conditions.map(({ code }) => code)).not.toContain('sapwood-unknown');
  });

  it('is weighed, and one that weighs more than asked says by how much', async () => {
    // Black walnut of 2000 × 600 × 40 mm, 0.048 m³; Wood Handbook, G12 0.55: between 26 and 31 kg at 8 %.
    await receive({ species: 'Black walnut', lengthNm: mm(2400) });
    const asked = ask(2000, 600, { species: 'Black walnut', thickness: mm(40), mostGrams: 20_000 });
    const [only] = (await fits(asked)).ranked;
    expect(only?.topGrams).toBeGreaterThan(26_000);
    expect(only?.topGrams).toBeLessThan(31_000);
    expect(only?.conditions.find(({ code }) => code === 'too-heavy')).toMatchObject({
      grams: only?.topGrams,
      by: (only?.topGrams ?? 0) - 20_000,
    });
  });

  it('by a day: of a room whose air nobody logged it is not known, unless it reads dry already', async () => {
    await receive({ species: 'Oak', reading: { mcTenths: 140, meter: '', spot: '' } });
    await receive({ species: 'Oak', reading: { mcTenths: 80, meter: '', spot: '' } });
    const asked = ask(2000, 600, { species: 'Oak', mostTenths: 100, dryBy: day('2027-03-01') });
    const { ranked } = await fits(asked);
    expect(ranked.map(({ dry }) => dry?.known)).toEqual([true, false]);
    expect(ranked[0]?.conditions).toEqual([]);
    expect(ranked[1]?.conditions).toContainEqual({ code: 'dry-unknown', because: 'no-air' });
  });

  it('makes the common-practice family top of 84 × 40 in with large corner radii from a slab just large enough', async () => {
    // Common practice: a family table of 84 × 40 in, corners of 6 in. A straight slab of 86 × 41 in holds it.
    const [label = ''] = await receive({ species: 'Sycamore', lengthNm: inches(86) });
    const half = 20.5 * 25.4;
    await measure(label, chalk([0, half, half], [86 * 25.4, half, half]));
    const shape = { kind: 'rectangle' as const, length: inches(84), width: inches(40), cornerRadius: inches(6) };
    const asked = ask(1, 1, { species: 'Sycamore' }, { shape });
    const [only] = (await fits(asked)).ranked;
    if (only?.judged.fit.answer !== 'yes') throw new Error('It does not fit.');
    // Judged once more, by the containment test alone.
    const line = await loadPiece(test.book.read, label);
    const slab = line && slabToSearch(line);
    if (!slab) throw new Error('There is no outline.');
    const request = unwrap(readRequest(asked.request));
    const { part, placement } = only.judged.fit.place;
    expect(holdsShape(regionFor(slab, request), request.sizes, part, placement)).toBe(true);
    const wider = ask(1, 1, { species: 'Sycamore' }, { shape: { ...shape, width: inches(42) } });
    expect((await fits(wider)).ranked[0]?.judged.fit.answer).toBe('nearly');
  });

  it('of sisters opened like a book needs half from each, and only from sisters side by side', async () => {
    const sisters = await receive({ species: 'Elm', flitch: 'K', flitchNumber: 1, count: 2, lengthNm: mm(2400) });
    const [stranger = ''] = await receive({ species: 'Elm', flitch: 'L', flitchNumber: 1, lengthNm: mm(2400) });
    for (const label of [...sisters, stranger]) await measure(label, chalk([0, 260, 260], [2400, 260, 260]));
    const asked = ask(2000, 1000, { species: 'Elm', make: { of: 'pair' } });
    const found = await fits(asked);
    expect(found.looked).toBe(1);
    expect(found.together.map(({ members }) => members.map(({ line }) => line.label as string))).toEqual([sisters]);
    expect(found.together[0]?.judged.fit.answer).toBe('yes');
    expect(found.together[0]?.areSisters).toBe(true);
    // Half of 1060 mm is 530 mm, and each is 520 mm wide.
    expect((await fits(ask(2000, 1060, { species: 'Elm', make: { of: 'pair' } }))).together[0]?.judged.fit.answer).toBe(
      'nearly',
    );
  });

  it('either side of a river takes two pieces, and the resin is the river by the thickness', async () => {
    const pair = await receive({ species: 'Maple', count: 2, lengthNm: mm(2400) });
    for (const label of pair) await measure(label, chalk([0, 200, 200], [2400, 200, 200]));
    const river = { least: mm(100), leastWood: mm(60), kerf: mm(3), thickness: mm(50) };
    const found = await fits(ask(2000, 900, { species: 'Maple', thickness: mm(50), make: { of: 'river', river } }));
    const both = found.together.find(({ members }) => members.length === 2);
    if (both?.judged.of !== 'river' || both.judged.fit.answer !== 'yes') throw new Error('No river.');
    const { fit } = both.judged;
    // Straight banks: 900 mm of top less two pieces of at most 400 mm leave 100 mm at the least, all along 2000 mm.
    expect(fit.river.narrowest).toBeGreaterThanOrEqual(um(100) - 1);
    const litres = fit.resin / 1e6;
    const mean = (fit.river.narrowest + fit.river.widest) / 2 / 1000;
    expect(litres).toBeCloseTo((mean * 2000 * 50) / 1e6, 1);
  });
});
