import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answerPull } from '@/app/_server/pull/answer-pull';
import { changeHold } from '@/app/_server/stock/change-hold';
import { holdPages, sayHeldBecause } from '@/app/(shop)/pull/_ui/say-hold';
import { unwrap } from '@/shared/result/result';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, type TestBook } from '@/tests/support/test-book';

describe('a hold at the bench', () => {
  let test: TestBook;
  let label = '';
  beforeAll(async () => {
    test = await freshBook();
    label = (await stocked(test.book, { lotCode: 'K26' })).labels[0] ?? '';
  });
  afterAll(() => test.remove());

  const ask = async () =>
    unwrap(await answerPull(test.book, { purpose: 'client', dayOfUse: day('2026-12-05'), label }, NOW));
  const said = async () => {
    const answer = await ask();
    return answer.verdict.reasons.flatMap((reason) => sayHeldBecause(reason, answer).trim() || []);
  };
  const pages = async () => {
    const { verdict, line } = await ask();
    return holdPages(verdict.reasons, line).map(({ href }) => href);
  };

  it('says why it was written, and where it is released: the lot on its page, the container on its own', async () => {
    expect([await said(), await pages()]).toEqual([[], []]);
    const { line } = await ask();
    const held = { stockId: line.lotId, hold: 'on-hold' as const };
    must(await changeHold(test.book, by(), { ...held, why: 'Maker asked to wait' }));
    expect(await said()).toEqual(['Written: Maker asked to wait.']);
    expect(await pages()).toEqual([`/lots/${line.lotId}`]);
    must(await changeHold(test.book, by(), { ...held, stockId: line.stockId, why: 'Dented lid!' }));
    expect((await said()).toSorted()).toEqual(['Written: Dented lid!', 'Written: Maker asked to wait.']);
    expect((await pages()).toSorted()).toEqual([`/containers/${label}`, `/lots/${line.lotId}`]);
  });

  it('takes the reason of the hold that stands, not of an earlier one', async () => {
    const { line } = await ask();
    const change = async (hold: 'free' | 'on-hold' | 'recalled', why: string) =>
      must(await changeHold(test.book, by(), { stockId: line.stockId, hold, why }));
    await change('free', 'Lid replaced');
    await change('recalled', 'Letter of 3 Nov');
    const { heldBecause } = await ask();
    expect(heldBecause.container).toBe('Letter of 3 Nov');
  });
});
