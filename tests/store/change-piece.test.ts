import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findThings } from '@/app/_server/find/find-things';
import { addJob } from '@/app/_server/jobs/add-job';
import { history } from '@/app/_server/ledger/history';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { type ChangePiece, changePiece } from '@/app/_server/stock/change-piece';
import { givePiece } from '@/app/_server/stock/give-piece';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { type ReceivePieces, receivePieces } from '@/app/_server/stock/receive-pieces';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, refusedWith, type TestBook } from '@/tests/support/test-book';

const INCH = 25_400_000;
const IN_INCHES = {
  lengthNm: 118 * INCH,
  widthStartNm: 28 * INCH,
  widthMiddleNm: 26 * INCH,
  widthEndNm: 27 * INCH,
  thicknessNm: 2 * INCH,
};

const BENCH = { name: 'Bench', purpose: 'client' as const, client: '', dayOfUse: day('2026-12-01'), note: '' };

describe('a piece put right', () => {
  let test: TestBook;
  let flitch = 0;
  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(() => test.remove());

  const receive = (more: Partial<ReceivePieces>) => receivePieces(test.book, by(), aSlab({ ...IN_INCHES, ...more }));
  /** A slab of a flitch of its own, and that slab as it would be put right. */
  async function slab(more: Partial<ReceivePieces> = {}) {
    flitch += 1;
    const wood = aSlab({ ...IN_INCHES, flitch: `K-${flitch}`, flitchNumber: 3, ...more });
    const { entryId, pieces } = must(await receivePieces(test.book, by(), wood));
    const [{ label, stockId } = { label: '', stockId: 0 }] = pieces;
    const { species, lengthNm, widthStartNm, widthMiddleNm, widthEndNm, thicknessNm, flags, note, flitchNumber } = wood;
    const sizes = { lengthNm, widthStartNm, widthMiddleNm, widthEndNm, thicknessNm };
    const as: ChangePiece = { label, why: '', species, ...sizes, flags, flitch: wood.flitch, flitchNumber, note };
    return { entryId, stockId, as };
  }
  const change = (as: ChangePiece) => changePiece(test.book, by(), as);
  const newest = async (stockId: number) => (await history(test.book, { stockId })).entries[0];

  it('says every change old and new in words, measures in the units of the book, and the reason', async () => {
    const { as, stockId } = await slab({ flags: ['live-edge-left', 'strapped'], note: 'Kept under the roof.' });
    must(
      await change({
        ...as,
        lengthNm: 116.5 * INCH,
        thicknessNm: 51_234_567,
        flags: ['checked', 'live-edge-left'],
        flitchNumber: 4,
        note: '',
        why: ' Bands cut, butt end trimmed. ',
      }),
    );
    expect(await newest(stockId)).toMatchObject({
      kind: 'piece-changed',
      who: 'Ada',
      canReverse: false,
      why:
        'Length: 118 in → 116 1/2 in; thickness: 2 in → 51.234567 mm; seen on it: strapped, live edge on the left → ' +
        'checked, live edge on the left; number in the flitch: 3 → 4; note: Kept under the roof. → none. ' +
        'Bands cut, butt end trimmed.',
    });
    expect(await loadPiece(test.book.read, as.label)).toMatchObject({
      lengthNm: 116.5 * INCH,
      flitchNumber: 4,
      note: '',
      facts: { flags: ['checked', 'live-edge-left'] },
    });
  });

  it('says one width where it is the same all along before and after, and each where it is not', async () => {
    const straight = (inches: number) => ({
      widthStartNm: inches * INCH,
      widthMiddleNm: inches * INCH,
      widthEndNm: inches * INCH,
    });
    const { as, stockId } = await slab(straight(26));
    must(await change({ ...as, ...straight(25), why: 'Ripped' }));
    expect((await newest(stockId))?.why).toBe('Width: 26 in → 25 in. Ripped');
    must(await change({ ...as, ...straight(25), widthEndNm: 24 * INCH, why: 'Measured again' }));
    expect((await newest(stockId))?.why).toBe('Width at the end: 25 in → 24 in. Measured again');
  });

  it('is found by its new wood and flitch, no longer by the old, and still by its label', async () => {
    const { as, stockId } = await slab({ species: 'Wenge' });
    must(await change({ ...as, species: ' Bog oak ', flitch: 'Fen 9' }));
    const found = async (query: string) => (await findThings(test.book, query)).piece;
    expect(await found('bog oak fen 9 slab')).toEqual([stockId]);
    expect(await found('wenge')).toEqual([]);
    expect(await found(as.label)).toEqual([stockId]);
  });

  it('needs a reason where a measure changes or a mark is taken away, and none where one is added', async () => {
    const { as, stockId } = await slab({ flags: ['strapped'] });
    const flags: ChangePiece['flags'] = [];
    expect(await change({ ...as, flags, why: '  ' })).toMatchObject({
      error: { code: 'reason-needed', field: 'why' },
    });
    expect(refusedWith(await change({ ...as, widthEndNm: as.widthEndNm + 1 }))).toBe('reason-needed');
    expect((await newest(stockId))?.kind).toBe('received');
    must(await change({ ...as, flags: ['strapped', 'twisted'], note: 'Lifts at one corner' }));
    expect((await newest(stockId))?.why).toBe(
      'Seen on it: strapped → strapped, twisted; note: none → Lifts at one corner.',
    );
  });

  it('is refused by the limits it came in by, beside the measure', async () => {
    const { as } = await slab();
    const why = 'Read wrong';
    for (const [field, size] of [
      ['lengthNm', 20_000_000_001],
      ['widthMiddleNm', 0],
      ['thicknessNm', 1_000_000_001],
      ['flitchNumber', 1000],
    ] as const) {
      const refused = { ok: false, error: { code: 'outside-range', field } };
      expect(await change({ ...as, [field]: size, why })).toEqual(refused);
      expect(await receive({ flitch: `L-${field}`, flitchNumber: 1, [field]: size })).toEqual(refused);
    }
    expect(await receive({ flitch: 'L', flitchNumber: 999, count: 2 })).toMatchObject({
      error: { code: 'outside-range', field: 'flitchNumber' },
    });
  });

  it('is refused where nothing is other or there is no such piece', async () => {
    const { as } = await slab({ flags: ['twisted', 'broken'] });
    expect(refusedWith(await change({ ...as, species: ` ${as.species} `, flags: ['broken', 'twisted'] }))).toBe(
      'changes-nothing',
    );
    expect(refusedWith(await change({ ...as, label: 'S000000' }))).toBe('not-found');
  });

  it('gets no number that another piece of its flitch has, on arrival or after it', async () => {
    const { as } = await slab();
    must(await receive({ flitch: as.flitch, flitchNumber: 4, count: 2 }));
    const refused = await change({ ...as, flitchNumber: 5 });
    expect(refused).toMatchObject({ error: { code: 'flitch-number-taken', field: 'flitchNumber' } });
    const twins = await receive({ flitch: ` ${as.flitch}`, flitchNumber: 2, count: 3 });
    if (twins.ok) throw new Error('Two pieces of a flitch have one number.');
    expect(sayRefusal(twins.error).fields?.flitchNumber).toContain(`Number 3 of flitch ${as.flitch} is S-`);
    must(await change({ ...as, flitchNumber: 6 }));
    must(await change({ ...as, flitchNumber: 3 }));
    must(await receive({ species: 'White oak', flitch: as.flitch, flitchNumber: 3 }));
    must(await receive({ form: 'offcut', flitch: as.flitch, flitchNumber: 3 }));
    must(await receive({ flitch: '', flitchNumber: 3, count: 2 }));
  });

  it('a number stays with a piece that was used, and comes back where the arrival was reversed', async () => {
    const used = await slab();
    const { jobId } = must(await addJob(test.book, by(), BENCH));
    must(await givePiece(test.book, by(), { label: used.as.label, act: 'take', jobId }));
    expect(refusedWith(await receive({ flitch: used.as.flitch, flitchNumber: 3 }))).toBe('flitch-number-taken');
    const undone = await slab();
    must(await reverseEntry(test.book, by(), { entryId: undone.entryId, why: 'Wrong flitch' }));
    must(await receive({ flitch: undone.as.flitch, flitchNumber: 3 }));
  });

  it('does not come back from a reversed arrival while another piece has its number', async () => {
    const first = await slab();
    const gone = by();
    must(await reverseEntry(test.book, gone, { entryId: first.entryId, why: 'Never came' }));
    const { id: entryId } = await test.book.read.entry.findUniqueOrThrow({ where: { key: gone.key } });
    const second = must(await receive({ flitch: first.as.flitch, flitchNumber: 3 }));
    const back = () => reverseEntry(test.book, by(), { entryId, why: 'It came after all' });
    const refused = await back();
    expect(refused).toMatchObject({ error: { code: 'flitch-number-taken', facts: { number: 3 } } });
    if (!refused.ok)
      expect(sayRefusal(refused.error).todo).toMatch(/^Each piece of a flitch.* Change the number of S-/);
    must(await reverseEntry(test.book, by(), { entryId: second.entryId, why: 'That was the first' }));
    must(await back());
  });
});
