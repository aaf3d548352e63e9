import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { noteSellerFigures, readSellerFigures, type SellerFigures } from '@/app/_server/shapes/seller-figures';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { nanometres } from '@/shared/units/nanometres';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, refusedWith, type TestBook } from '@/tests/support/test-book';

const SAID: SellerFigures = {
  name: 'Hill Sawmill',
  lengthNm: nanometres(2_450_000_000),
  widthNm: null,
  thicknessNm: nanometres(60_000_000),
  volumeMm3: 106_188_175,
  massMg: null,
  mcTenths: 90,
};

describe('what a seller said of a piece', () => {
  let test: TestBook;
  let label: string;
  beforeAll(async () => {
    test = await freshBook();
    label = must(await receivePieces(test.book, by(), aSlab())).pieces[0]?.label ?? '';
  });
  afterAll(() => test.remove());
  const note = (more: Partial<SellerFigures> = {}) => noteSellerFigures(test.book, by(), { label, ...SAID, ...more });
  const line = async () => {
    const found = await loadPiece(test.book.read, label);
    if (!found) throw new Error('The slab is gone.');
    return found;
  };

  it('is kept beside what was measured, and changes nothing of it', async () => {
    const before = await line();
    must(await note());
    const after = await line();
    expect(await readSellerFigures(test.book, after.stockId)).toEqual(SAID);
    const { lengthNm, widthStartNm, widthMiddleNm, widthEndNm, thicknessNm, facts, readings } = before;
    expect(after).toMatchObject({ lengthNm, widthStartNm, widthMiddleNm, widthEndNm, thicknessNm, facts, readings });
  });

  it('stands in the history figure by figure, so that what was said before is not lost', async () => {
    must(await note({ mcTenths: 120, volumeMm3: null }));
    const entries = await test.book.read.entry.findMany({ where: { kind: 'seller-noted' }, orderBy: { id: 'asc' } });
    expect(entries.map(({ why }) => why)).toEqual([
      'Hill Sawmill; 2450 mm long; 60 mm thick; 0.1062 m³; 9 %',
      'Hill Sawmill; 2450 mm long; 60 mm thick; 12 %',
    ]);
  });

  it('said twice is written once, and of no piece at all is refused', async () => {
    expect(refusedWith(await note({ mcTenths: 120, volumeMm3: null }))).toBe('changes-nothing');
    const nobody = await noteSellerFigures(test.book, by(), { label: 'S000000', ...SAID });
    expect(refusedWith(nobody)).toBe('not-found');
    expect(await test.book.read.entry.count({ where: { kind: 'seller-noted' } })).toBe(2);
  });
});
