import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { labelContentFor } from '@/app/_server/labels/label-content-for';
import { receiveBoards } from '@/app/_server/stock/receive-boards';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { unwrap } from '@/shared/result/result';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';

const INCH = 25_400_000;
const holder = globalThis as { flitchbookStore?: Promise<TestBook['book']> };

describe('what stands on a label', () => {
  let test: TestBook;
  beforeAll(async () => {
    test = await freshBook();
    holder.flitchbookStore = Promise.resolve(test.book);
  });
  afterAll(async () => {
    holder.flitchbookStore = undefined;
    await test.remove();
  });

  it('gives a piece its widths from the narrowest to the widest, and says when it is strapped', async () => {
    const sizes = {
      lengthNm: 89 * INCH,
      widthStartNm: 30 * INCH,
      widthMiddleNm: 23.125 * INCH,
      widthEndNm: 26 * INCH,
      thicknessNm: 2 * INCH,
    };
    const wood = must(await receivePieces(test.book, by(), aSlab({ ...sizes, flags: ['strapped'] })));
    const [label] = unwrap(await labelContentFor(wood.pieces.map((each) => each.label)));
    expect(label?.lines.slice(0, 2)).toEqual(['STRAPPED', '7\' 5" long, 23 1/8" to 30" wide, 2" thick']);
  });

  it('gives a pack its boards and its board feet instead of a size', async () => {
    const pack = must(
      await receiveBoards(test.book, by(), {
        as: 'pack',
        species: 'Walnut',
        thicknessNm: 2 * INCH,
        flags: [],
        flitch: '',
        note: '',
        receivedOn: TODAY,
        boards: [6, 6, 9].map((width) => ({ widthNm: width * INCH, lengthNm: 96 * INCH })),
      }),
    );
    const [label] = unwrap(await labelContentFor(pack.pieces.map((each) => each.label)));
    expect(label?.lines[0]).toBe('3 boards, 28 board feet, 8/4');
  });
});
