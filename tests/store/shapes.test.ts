import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { changeMarks } from '@/app/_server/shapes/change-marks';
import { confirmMarks } from '@/app/_server/shapes/confirm-marks';
import { measureByStations } from '@/app/_server/shapes/measure-by-stations';
import { changePiece } from '@/app/_server/stock/change-piece';
import { discard } from '@/app/_server/stock/discard';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { receiveBoards } from '@/app/_server/stock/receive-boards';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import type { NewMark } from '@/shared/outline/piece-marks';
import type { ChalkLine } from '@/shared/outline/station';
import { nanometres } from '@/shared/units/nanometres';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const mm = (length: number) => nanometres(Math.round(length * 1e6));
const um = (length: number) => Math.round(length * 1000);
const chalk = (...stations: [number, number, number][]): ChalkLine => ({
  stations: stations.map(([at, left, right]) => ({ at: mm(at), left: mm(left), right: mm(right) })),
});
const FIVE = chalk([0, 300, 310], [600, 340, 330], [1200, 360, 352.5], [1800, 350, 340], [2400, 280, 300]);
const knot = (x: number, y: number, more: Partial<Extract<NewMark, { is: 'defect' }>> = {}): NewMark => ({
  is: 'defect',
  kind: 'knot',
  place: { shape: 'circle', centre: { x: um(x), y: um(y) }, radius: um(40) },
  depth: { face: 'through' },
  decision: 'keep-out',
  note: '',
  ...more,
});

let test: TestBook;
let label: string;
beforeAll(async () => {
  test = await freshBook();
  label = must(await receivePieces(test.book, by(), aSlab())).pieces[0]?.label ?? '';
});
afterAll(() => test.remove());
const line = async () => {
  const found = await loadPiece(test.book.read, label);
  if (!found) throw new Error('The slab is gone.');
  return found;
};

describe('a slab measured by stations', () => {
  it('keeps its outline, and its length and widths follow to the nanometre', async () => {
    must(await measureByStations(test.book, by(), { label, chalkLine: FIVE, why: '' }));
    const measured = await line();
    expect(measured.shape?.source).toBe('stations');
    expect(measured.shape?.outline.ring).toHaveLength(10);
    expect(measured).toMatchObject({
      lengthNm: mm(2400),
      widthStartNm: mm(610),
      widthMiddleNm: mm(712.5),
      widthEndNm: mm(580),
    });
  });

  it('is measured again only with a reason, and both measurings stay', async () => {
    const again = chalk([0, 300, 310], [2400, 280, 300]);
    expect(refusedWith(await measureByStations(test.book, by(), { label, chalkLine: again, why: ' ' }))).toBe(
      'reason-needed',
    );
    must(await measureByStations(test.book, by(), { label, chalkLine: again, why: 'Tape slipped' }));
    expect((await line()).shape?.outline.ring).toHaveLength(4);
    expect(await test.book.read.shape.count()).toBe(2);
    must(await measureByStations(test.book, by(), { label, chalkLine: FIVE, why: 'The first was right' }));
  });

  it('is refused with the value that is wrong, and nothing is written', async () => {
    const crossed = chalk([0, 300, 310], [600, 200, -250], [2400, 280, 300]);
    const refused = await measureByStations(test.book, by(), { label, chalkLine: crossed, why: 'x' });
    expect(refused).toMatchObject({
      ok: false,
      error: { code: 'no-outline', facts: { why: 'edges-cross', station: 1, value: 'right' } },
    });
    expect(await test.book.read.shape.count()).toBe(3);
  });

  it('takes length and widths from its outline alone', async () => {
    const { species, lengthNm, widthStartNm, widthMiddleNm, widthEndNm, thicknessNm, flitch, note } = await line();
    const fields = { species, lengthNm, widthStartNm, widthMiddleNm, widthEndNm, thicknessNm, flitch, note, flags: [] };
    const change = (more: Partial<typeof fields>) =>
      changePiece(test.book, by(), { label, ...fields, ...more, why: 'Measured' });
    expect(refusedWith(await change({ lengthNm: mm(2300) }))).toBe('measured-shape');
    must(await change({ thicknessNm: mm(55) }));
  });
});

describe('marks on a slab', () => {
  it('are put on, changed and taken off, and what is drawn is said in its flags', async () => {
    const strap: NewMark = {
      is: 'strap',
      from: { x: um(400), y: um(-360) },
      to: { x: um(400), y: um(360) },
      note: 'Steel band',
    };
    const check: NewMark = { is: 'end-check', end: 'start', depth: mm(120), note: '' };
    const { added } = must(
      await changeMarks(test.book, by(), { label, add: [knot(1000, 100), strap, check], remove: [], why: '' }),
    );
    const marked = await line();
    expect(marked.marks.defects).toMatchObject([{ id: added[0], kind: 'knot', decision: 'keep-out' }]);
    expect(marked.marks.straps).toMatchObject([
      { id: added[1], from: { x: 400_000, y: -360_000 }, note: 'Steel band' },
    ]);
    expect(marked.marks.endChecks).toMatchObject([{ id: added[2], end: 'start', depth: mm(120) }]);
    expect([...marked.facts.flags].sort()).toEqual(['checked', 'strapped']);

    const filled = knot(1000, 100, { decision: 'fill', depth: { face: 'A', depth: mm(12) } });
    must(await changeMarks(test.book, by(), { label, add: [filled], remove: [added[0] ?? 0], why: 'Only on face A' }));
    expect((await line()).marks.defects).toMatchObject([{ decision: 'fill', depth: { face: 'A', depth: mm(12) } }]);
    expect(await test.book.read.mark.count()).toBe(4);
    expect(refusedWith(await changeMarks(test.book, by(), { label, add: [], remove: [added[0] ?? 0], why: '' }))).toBe(
      'mark-gone',
    );
  });

  it('off the wood are refused, and nothing is written', async () => {
    const before = await test.book.read.mark.count();
    const put = (mark: NewMark) => changeMarks(test.book, by(), { label, add: [mark], remove: [], why: '' });
    expect(refusedWith(await put(knot(3000, 0)))).toBe('mark-off-the-wood');
    expect(refusedWith(await put({ is: 'end-check', end: 'end', depth: mm(2400), note: '' }))).toBe(
      'end-check-does-not-fit',
    );
    const far = { x: um(5000), y: 0 };
    expect(refusedWith(await put({ is: 'strap', from: far, to: { ...far, y: um(10) }, note: '' }))).toBe(
      'mark-off-the-wood',
    );
    expect(await test.book.read.mark.count()).toBe(before);
  });

  it('that a new measuring leaves off the wood are counted and stay', async () => {
    must(await changeMarks(test.book, by(), { label, add: [knot(2300, 0)], remove: [], why: '' }));
    const short = chalk([0, 300, 310], [2000, 280, 300]);
    const answer = must(await measureByStations(test.book, by(), { label, chalkLine: short, why: 'End sawn off' }));
    expect(answer).toMatchObject({ marks: 4, marksOff: 1 });
    // Nobody looked yet whether the others lie where they should on the new outline.
    const { marksOfBefore, shape, marks } = await line();
    expect(marksOfBefore).toHaveLength(4);
    const confirm = (shapeId: number) => confirmMarks(test.book, by(), { label, shapeId });
    expect(refusedWith(await confirm((shape?.id ?? 0) - 1))).toBe('measured-meanwhile');
    expect(
      refusedWith(
        await changeMarks(test.book, by(), { label, add: [knot(90, 0)], remove: [], why: '', shapeId: null }),
      ),
    ).toBe('measured-meanwhile');
    expect(must(await confirm(shape?.id ?? 0)).confirmed).toBe(4);
    expect((await line()).marksOfBefore).toEqual([]);
    expect((await line()).marks.defects.map(({ place }) => place)).toEqual(marks.defects.map(({ place }) => place));
    expect(refusedWith(await confirm(shape?.id ?? 0))).toBe('changes-nothing');
    expect((await line()).marks.defects).toHaveLength(2);
    expect((await proveBook(test.book.read)).differences).toEqual([]);
  });
});

describe('what has no outline of its own', () => {
  const square = chalk([0, 300, 310], [2000, 280, 300]);
  const refuses = async (of: string, code: string) => {
    expect(refusedWith(await measureByStations(test.book, by(), { label: of, chalkLine: square, why: 'x' }))).toBe(
      code,
    );
    expect(
      refusedWith(await changeMarks(test.book, by(), { label: of, add: [knot(90, 0)], remove: [], why: '' })),
    ).toBe(code);
  };

  it('a pack of boards is neither measured nor marked', async () => {
    const pack = must(
      await receiveBoards(test.book, by(), {
        as: 'pack',
        species: 'Walnut',
        thicknessNm: mm(50.8),
        quarters: 8,
        surfacing: 'rough',
        flags: [],
        flitch: '',
        note: '',
        origin: '',
        boards: [{ widthNm: mm(152.4), lengthNm: mm(2438.4) }],
        receivedOn: TODAY,
      }),
    );
    await refuses(pack.pieces[0]?.label ?? '', 'pack-has-no-outline');
  });

  it('nor is what is no longer in the shop', async () => {
    const gone = must(await receivePieces(test.book, by(), aSlab())).pieces[0]?.label ?? '';
    must(await discard(test.book, by(), { label: gone, why: 'Sold' }));
    await refuses(gone, 'no-longer-here');
  });
});
