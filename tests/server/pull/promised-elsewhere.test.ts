import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addJob } from '@/app/_server/jobs/add-job';
import { reserve } from '@/app/_server/promises/reserve';
import { answerPull } from '@/app/_server/pull/answer-pull';
import { sayElsewhere } from '@/app/(shop)/pull/_ui/say-elsewhere';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, type TestBook, TODAY } from '@/tests/support/test-book';

describe('a tin that is promised to another job', () => {
  let test: TestBook;
  let label = '';
  let [table, desk] = [0, 0];
  const job = async (name: string) =>
    must(await addJob(test.book, by(), { name, purpose: 'client', client: '', dayOfUse: day('2026-12-01'), note: '' }))
      .jobId;
  const elsewhere = async (jobId?: number) => {
    const answered = await answerPull(test.book, { label, jobId, purpose: 'client', dayOfUse: TODAY }, NOW);
    if (!answered.ok) throw new Error(answered.error.code);
    return answered.value.elsewhere;
  };
  const promise = async (jobId: number, amount?: number) =>
    must(await reserve(test.book, by(), { jobId, items: [{ label, amount }] }));

  beforeAll(async () => {
    test = await freshBook();
    label = (await stocked(test.book)).labels[0] ?? '';
    [table, desk] = [await job('Table'), await job('Desk')];
  });
  afterAll(() => test.remove());

  it('says so when it is scanned for this one: to whom, for when, and what is free, before anything is taken', async () => {
    expect(await elsewhere(desk)).toBeNull();
    await promise(table, 1_000_000);
    const some = await elsewhere(desk);
    const { left } = (await answerLine()) ?? {};
    expect(some).toMatchObject({
      free: (left ?? 0) - 1_000_000,
      to: [{ job: 'Table', amount: 1_000_000, who: 'Ada' }],
    });
    // To the job it is promised to, nothing is in the way.
    expect(await elsewhere(table)).toBeNull();
    expect((await elsewhere())?.to).toHaveLength(1);

    await promise(table, some?.free);
    const all = await elsewhere(desk);
    expect(all?.free).toBe(0);
    expect(all && sayElsewhere(all, { today: TODAY, order: 'day-first', prefer: 'metric', unit: 'mg' })).toMatch(
      /^Promised: .+ to Table for 1 Dec.*, by Ada on .+\. Nothing of it is free for this\.$/,
    );
  });

  const answerLine = async () => {
    const answered = await answerPull(test.book, { label, jobId: desk, purpose: 'client', dayOfUse: TODAY }, NOW);
    return answered.ok ? answered.value.line : undefined;
  };
});
