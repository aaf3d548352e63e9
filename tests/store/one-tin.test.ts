import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addJob } from '@/app/_server/jobs/add-job';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { answerPull } from '@/app/_server/pull/answer-pull';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { loadContainer } from '@/app/_server/stock/load-container';
import { recordInspection } from '@/app/_server/stock/record-inspection';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

describe('one tin from the door to a job and back', () => {
  let test: TestBook;
  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(() => test.remove());

  it('is used, stopped on a later day, overridden with a test pour, and put back by reversing', async () => {
    const { book } = test;
    const { labels, lotId } = await stocked(book, { count: 2 });
    const [label = '', sister = ''] = labels;
    const job = must(
      await addJob(book, by(), {
        name: 'River desk',
        purpose: 'client',
        client: 'Marlow',
        dayOfUse: day('2026-12-05'),
        note: '',
      }),
    );
    const ask = { label, jobId: job.jobId, purpose: 'client' as const, asked: 400_000 };

    const early = await answerPull(book, { ...ask, dayOfUse: day('2026-12-05') }, NOW);
    expect(early.ok && early.value.verdict.word).toBe('use');
    expect(early.ok && early.value.verdict.governing).toMatchObject({
      basis: 'best-before',
      lastGoodDay: '2027-01-10',
    });
    const first = must(await pullContainer(book, by(), { ...ask, dayOfUse: day('2026-12-05'), seen: 'use' }));
    expect(first).toMatchObject({ left: 2_100_000, overridden: false });
    expect((await loadContainer(book.read, label))?.candidate.container.opened).toEqual({
      on: TODAY,
      sureness: 'known',
    });

    const late = { ...ask, dayOfUse: day('2027-02-01') };
    const stop = await answerPull(book, late, NOW);
    expect(stop.ok && stop.value.verdict.word).toBe('stop');
    expect(refusedWith(await pullContainer(book, by(), { ...late, seen: 'use' }))).toBe('verdict-changed');
    expect(refusedWith(await pullContainer(book, by(), { ...late, seen: 'stop' }))).toBe('override-needs-reason');
    must(
      await recordInspection(book, by(), {
        lotId,
        containerLabel: label,
        kind: 'test-pour',
        madeOn: TODAY,
        passed: true,
        method: '100 g in a cup',
        note: 'Hard after a day',
      }),
    );
    const poured = await answerPull(book, late, NOW);
    const inspectionId = (poured.ok && poured.value.testPour?.id) || 0;
    const overriding = {
      ...late,
      seen: 'stop' as const,
      override: { reason: 'Client agreed in writing', inspectionId },
    };
    const before = await loadContainer(book.read, label);
    const overridden = must(await pullContainer(book, by(), overriding));
    expect(overridden).toMatchObject({ left: 1_700_000, overridden: true });

    const told = await history(book, { stockId: before?.stockId ?? 0 });
    expect(told.entries.map((entry) => entry.kind)).toEqual(['pulled', 'inspected', 'pulled', 'received']);
    expect(told.entries[0]).toMatchObject({
      verdict: 'stop',
      why: 'Client agreed in writing',
      overridden: { note: 'Hard after a day' },
    });

    must(await reverseEntry(book, by(), { entryId: told.entries[0]?.id ?? 0, why: 'Scanned the wrong job' }));
    const after = await loadContainer(book.read, label);
    expect(after?.left).toBe(before?.left);
    expect(refusedWith(await reverseEntry(book, by(), { entryId: told.entries[0]?.id ?? 0, why: 'again' }))).toBe(
      'already-reversed',
    );
    expect((await loadContainer(book.read, sister))?.left).toBe(2_500_000);
    expect((await proveBook(book.read)).differences).toEqual([]);
  });
});
