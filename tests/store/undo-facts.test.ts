import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cutStraps } from '@/app/_server/cuts/cut-straps';
import { pairPieces, partPair } from '@/app/_server/cuts/pair-pieces';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { changeMarks } from '@/app/_server/shapes/change-marks';
import { measureByStations } from '@/app/_server/shapes/measure-by-stations';
import { discard } from '@/app/_server/stock/discard';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import type { NewMark } from '@/shared/outline/piece-marks';
import { nanometres } from '@/shared/units/nanometres';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, refusedWith, type TestBook } from '@/tests/support/test-book';

let test: TestBook;
let flitch = 0;
beforeAll(async () => {
  test = await freshBook();
});
afterAll(async () => {
  expect((await proveBook(test.book.read)).differences).toEqual([]);
  await test.remove();
});

const um = (mm: number) => mm * 1000;
const STRAP: NewMark = { is: 'strap', from: { x: um(500), y: um(-300) }, to: { x: um(500), y: um(300) }, note: '' };

async function slabs(count: number): Promise<string[]> {
  flitch += 1;
  const { pieces } = must(
    await receivePieces(test.book, by(), aSlab({ count, flitch: `Undo ${flitch}`, flitchNumber: 1 })),
  );
  return pieces.map(({ label }) => label);
}

async function line(label: string) {
  const found = await loadPiece(test.book.read, label);
  if (!found) throw new Error(`${label} is gone.`);
  return found;
}

/** Marks the slab, or cuts its bands, and says which entry that was. */
async function mark(label: string, add: NewMark[], remove: number[] = []) {
  const { added } = must(await changeMarks(test.book, by(), { label, add, remove, why: '' }));
  return { added, entryId: await newest(label) };
}

async function newest(label: string): Promise<number> {
  const { entries } = await history(test.book, { stockId: (await line(label)).stockId });
  return entries[0]?.id ?? 0;
}

const undo = (entryId: number) => reverseEntry(test.book, by(), { entryId, why: 'Pressed the wrong key' });

describe('undoing what was drawn on a slab', () => {
  it('takes off what was put on, with the word that came with it', async () => {
    const [label = ''] = await slabs(1);
    const before = await line(label);
    const { entryId } = await mark(label, [STRAP]);
    expect((await line(label)).facts.flags).toContain('strapped');
    must(await undo(entryId));
    expect((await line(label)).marks.straps).toEqual([]);
    expect((await line(label)).facts.flags).toEqual(before.facts.flags);
    expect(refusedWith(await undo(entryId))).toBe('already-reversed');
  });

  it('leaves a word that was said before the mark was drawn', async () => {
    const [label = ''] = await slabs(1);
    await mark(label, [STRAP]);
    const second = await mark(label, [{ ...STRAP, note: 'Another' }]);
    must(await undo(second.entryId));
    expect((await line(label)).facts.flags).toContain('strapped');
  });

  it('leaves the word while another mark says it too', async () => {
    const [label = ''] = await slabs(1);
    const first = await mark(label, [STRAP]);
    await mark(label, [{ ...STRAP, note: 'Another' }]);
    must(await undo(first.entryId));
    expect((await line(label)).marks.straps).toHaveLength(1);
    expect((await line(label)).facts.flags).toContain('strapped');
  });

  it('puts on again what was taken off', async () => {
    const [label = ''] = await slabs(1);
    const { added } = await mark(label, [STRAP]);
    const taken = await mark(label, [], added);
    expect((await line(label)).marks.straps).toEqual([]);
    must(await undo(taken.entryId));
    expect((await line(label)).marks.straps).toMatchObject([{ id: added[0] }]);
  });

  it('ties the bands again that were cut, where it held', async () => {
    const [label = ''] = await slabs(1);
    await mark(label, [STRAP]);
    must(await cutStraps(test.book, by(), { label, why: 'It holds' }));
    const entryId = await newest(label);
    expect((await line(label)).facts.flags).not.toContain('strapped');
    must(await undo(entryId));
    expect((await line(label)).marks.straps).toHaveLength(1);
    expect((await line(label)).facts.flags).toContain('strapped');
    const { entries } = await history(test.book, { stockId: (await line(label)).stockId });
    expect(entries.slice(0, 2)).toMatchObject([
      { kind: 'reversed', reverses: entryId },
      { kind: 'straps-cut', canReverse: false },
    ]);
  });

  it('is refused once the mark was taken off, the slab measured anew, or gone', async () => {
    const [label = '', other = '', third = ''] = await slabs(3);
    const first = await mark(label, [STRAP]);
    await mark(label, [], first.added);
    expect(refusedWith(await undo(first.entryId))).toBe('mark-gone');

    const drawn = await mark(other, [STRAP]);
    const mm = (value: number) => nanometres(value * 1_000_000);
    must(
      await measureByStations(test.book, by(), {
        label: other,
        chalkLine: {
          stations: [0, 1200, 2400].map((at) => ({ at: mm(at), left: mm(310), right: mm(310) })),
        },
        why: '',
      }),
    );
    expect(refusedWith(await undo(drawn.entryId))).toBe('measured-meanwhile');

    const gone = await mark(third, [STRAP]);
    must(await discard(test.book, by(), { label: third, why: 'Rotten' }));
    expect(refusedWith(await undo(gone.entryId))).toBe('no-longer-here');
  });
});

describe('undoing a measuring', () => {
  const mm = (value: number) => nanometres(value * 1_000_000);
  const measure = (label: string, half: number) =>
    measureByStations(test.book, by(), {
      label,
      chalkLine: { stations: [0, 1200, 2400].map((at) => ({ at: mm(at), left: mm(half), right: mm(half) })) },
      why: 'Measured',
    });

  it('brings back the outline before it, and before the first the three widths', async () => {
    const [label = ''] = await slabs(1);
    const typed = await line(label);
    must(await measure(label, 310));
    const first = { entryId: await newest(label), shape: (await line(label)).shape };
    must(await measure(label, 280));
    const second = await newest(label);
    expect(refusedWith(await undo(first.entryId))).toBe('changed-since');
    must(await undo(second));
    expect((await line(label)).shape).toEqual(first.shape);
    expect((await line(label)).widthMiddleNm).toBe(mm(620));
    must(await undo(first.entryId));
    const { shape, lengthNm, widthStartNm, widthMiddleNm, widthEndNm } = await line(label);
    expect({ shape, lengthNm, widthStartNm, widthMiddleNm, widthEndNm }).toEqual({
      shape: null,
      lengthNm: typed.lengthNm,
      widthStartNm: typed.widthStartNm,
      widthMiddleNm: typed.widthMiddleNm,
      widthEndNm: typed.widthEndNm,
    });
    // Measured anew, what counts is the new one, not one that was undone.
    must(await measure(label, 250));
    must(await undo(await newest(label)));
    expect((await line(label)).shape).toBeNull();
  });

  it('is refused while marks drawn on it stand', async () => {
    const [label = ''] = await slabs(1);
    must(await measure(label, 310));
    const entryId = await newest(label);
    await mark(label, [STRAP]);
    expect(refusedWith(await undo(entryId))).toBe('changed-since');
  });
});

describe('a pairing', () => {
  it('stands in the history of both halves, is undone from either, and so is its parting', async () => {
    const [one = '', two = ''] = await slabs(2);
    must(await pairPieces(test.book, by(), { label: one, withLabel: two }));
    const entryId = await newest(two);
    expect(await newest(one)).toBe(entryId);
    must(await partPair(test.book, by(), { label: two }));
    const parted = await newest(one);
    expect(parted).toBeGreaterThan(entryId);
    must(await undo(parted));
    expect((await line(one)).pairedWith?.label).toBe(two);
    must(await undo(entryId));
    expect([(await line(one)).pairedWith, (await line(two)).pairedWith]).toEqual([null, null]);
    expect(await newest(two)).toBe(await newest(one));
  });

  it('is not undone once a half is in another pair', async () => {
    const [one = '', two = '', three = ''] = await slabs(3);
    must(await pairPieces(test.book, by(), { label: one, withLabel: two }));
    const first = await newest(one);
    must(await partPair(test.book, by(), { label: one }));
    const parted = await newest(one);
    must(await pairPieces(test.book, by(), { label: one, withLabel: three }));
    expect(refusedWith(await undo(first))).toBe('changed-since');
    expect(refusedWith(await undo(parted))).toBe('changed-since');
  });
});
