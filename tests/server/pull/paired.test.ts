import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addJob } from '@/app/_server/jobs/add-job';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { answerPull } from '@/app/_server/pull/answer-pull';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { sayMixedWith } from '@/app/(shop)/pull/_ui/say-mixed-with';
import { unwrap } from '@/shared/result/result';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, type TestBook, TODAY } from '@/tests/support/test-book';

const ON = { purpose: 'client' as const, dayOfUse: day('2026-12-05') };

describe('parts A and B', () => {
  let test: TestBook;
  let partA = '';
  let partB = '';
  let otherB = '';
  let jobId = 0;
  beforeAll(async () => {
    test = await freshBook();
    const label = async (product: Parameters<typeof stocked>[1]) => (await stocked(test.book, product)).labels[0] ?? '';
    partA = await label({});
    partB = await label({
      product: { name: 'Part B', kind: 'resin-b', system: { name: 'Tarn deep pour', part: 'B' } },
    });
    otherB = await label({
      product: { name: 'Other B', kind: 'resin-b', system: { name: 'Fell top coat', part: 'B' } },
    });
    const job = { ...ON, name: 'Desk', client: '', note: '' };
    jobId = must(await addJob(test.book, by(), job)).jobId;
  });
  afterAll(() => test.remove());

  const ask = async (label: string, change: { jobId?: number; pairedLabel?: string }) =>
    unwrap(await answerPull(test.book, { ...ON, ...change, label }, NOW));

  it('are checked against the part named, where no job says which', async () => {
    expect((await ask(partB, { pairedLabel: partA })).verdict.word).toBe('use');
    const wrong = await ask(otherB, { pairedLabel: partA });
    expect(wrong.verdict).toMatchObject({ word: 'stop', override: { allowed: false, because: ['wrong-system'] } });
    expect(wrong.pairedWith?.label).toBe(printOwnLabel(partA as OwnLabelCode));
  });

  it('say how the other part stands on the day', async () => {
    const { mixedWith } = await ask(partB, { pairedLabel: partA });
    expect(mixedWith && sayMixedWith(mixedWith, { today: TODAY, order: 'day-first', prefer: 'imperial' })).toMatch(
      new RegExp(`^Mixed with ${printOwnLabel(partA as OwnLabelCode)}, part A: good to \\d+ \\w+`),
    );
    expect((await ask(partB, {})).mixedWith).toBeNull();
  });

  it('are refused against a label that is no other part the book knows', async () => {
    const plain = (await stocked(test.book, { product: { name: 'Varnish', kind: 'varnish', system: undefined } }))
      .labels;
    const other = { ...ON, label: partB, asked: 1000, seen: 'care' as const };
    for (const pairedLabel of [plain[0] ?? '', 'C000000']) {
      const refused = { error: { code: 'not-found', field: 'pairedLabel' } };
      const answered = await answerPull(test.book, { ...ON, label: partB, pairedLabel }, NOW);
      expect(answered).toMatchObject(refused);
      expect(await pullContainer(test.book, by(), { ...other, pairedLabel })).toMatchObject(refused);
      if (!answered.ok) {
        expect(sayRefusal(answered.error).what).toMatch(
          plain[0] === pairedLabel ? /no two-part system/ : /not in this book/,
        );
      }
    }
  });

  it('are checked against the last of their own system, though another system was pulled for the job since', async () => {
    const two = must(await addJob(test.book, by(), { ...ON, name: 'Two systems', client: '', note: '' })).jobId;
    const otherA = (
      await stocked(test.book, {
        product: { name: 'Other A', kind: 'resin-a', system: { name: 'Fell top coat', part: 'A' } },
      })
    ).labels[0];
    for (const label of [partA, otherA ?? '']) {
      must(await pullContainer(test.book, by(), { ...ON, jobId: two, label, asked: 1000, seen: 'care' }));
    }
    expect((await ask(partB, { jobId: two })).pairedWith?.label).toBe(printOwnLabel(partA as OwnLabelCode));
    expect((await ask(partB, { jobId: two })).verdict.override).toBe('not-needed');
    expect((await ask(otherB, { jobId: two })).pairedWith?.label).toBe(printOwnLabel(otherA as OwnLabelCode));
  });

  it('are checked against the last other part pulled for the job, until that pull is undone', async () => {
    expect((await ask(otherB, { jobId })).pairedWith).toBeNull();
    const pulled = must(await pullContainer(test.book, by(), { ...ON, jobId, label: partA, asked: 1000, seen: 'use' }));
    expect((await ask(otherB, { jobId })).verdict.reasons[0]).toMatchObject({
      code: 'wrong-system',
      because: 'other-system',
    });
    expect((await ask(partB, { jobId })).verdict.word).toBe('use');
    must(await reverseEntry(test.book, by(), { entryId: pulled.entryId, why: 'Wrong job' }));
    expect((await ask(otherB, { jobId })).verdict.word).toBe('use');
  });
});
