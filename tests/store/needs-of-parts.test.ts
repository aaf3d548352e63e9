import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addJob } from '@/app/_server/jobs/add-job';
import { addPart } from '@/app/_server/jobs/add-part';
import { removePart } from '@/app/_server/jobs/remove-part';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addNeed } from '@/app/_server/needs/add-need';
import { changeNeed } from '@/app/_server/needs/change-need';
import { removeNeed } from '@/app/_server/needs/remove-need';
import { standingNeeds } from '@/app/_server/needs/standing-needs';
import { addStep } from '@/app/_server/timeline/add-step';
import { removeStep } from '@/app/_server/timeline/remove-step';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, refusedWith, type TestBook } from '@/tests/support/test-book';

let test: TestBook;
beforeAll(async () => {
  test = await freshBook();
});
afterAll(async () => {
  expect((await proveBook(test.book.read)).differences).toEqual([]);
  await test.remove();
});

let count = 0;
async function aJob() {
  count += 1;
  const name = `Table ${count}`;
  const fields = { name, purpose: 'own' as const, client: '', dayOfUse: day('2026-12-31'), note: '' };
  const { jobId } = must(await addJob(test.book, by(), fields));
  const { productId } = await stocked(test.book, { product: { name: `Insert ${count}` } });
  const part = async (words: string) => {
    const shape = { shape: '' as const, lengthNm: null, widthNm: null, thicknessNm: null };
    const { entryId } = must(
      await addPart(test.book, by(), { jobId, kind: 'base', name: words, count: 1, note: '', ...shape }),
    );
    return (await test.book.read.jobPart.findFirstOrThrow({ where: { entryId } })).id;
  };
  const ask = { kind: 'product' as const, productId, amount: 1000, unit: 'mg' as const, surface: '', note: '' };
  const need = async (more: { partId?: number | null; stepId?: number }) => {
    must(await addNeed(test.book, by(), { ...ask, ...more, jobId }));
    return (await test.book.read.need.findFirstOrThrow({ orderBy: { id: 'desc' } })).id;
  };
  const parts = async () => (await standingNeeds(test.book.read, { jobId })).map(({ part }) => part);
  return { jobId, ask, part, need, parts };
}
const undo = async (kind: string) => {
  const { id } = await test.book.read.entry.findFirstOrThrow({ where: { kind }, orderBy: { id: 'desc' } });
  return reverseEntry(test.book, by(), { entryId: id, why: 'Mistaken' });
};

describe('what a part needs', () => {
  it('is hardware, resin, finish or wood of that part, and stays with it when it is changed', async () => {
    const { jobId, ask, part, need, parts } = await aJob();
    const [base, top] = [await part('Base'), await part('Top')];
    const needId = await need({ partId: base });
    await need({ partId: null });
    must(
      await addNeed(test.book, by(), {
        kind: 'wood',
        species: 'Oak',
        form: 'board',
        count: 4,
        note: '',
        partId: top,
        jobId,
      }),
    );
    expect((await parts()).sort()).toEqual(['Base', 'Top', null].sort());
    must(await changeNeed(test.book, by(), { ...ask, needId, amount: 2000 }));
    expect((await parts()).sort()).toEqual(['Base', 'Top', null].sort());
    const changed = await test.book.read.need.findFirstOrThrow({ orderBy: { id: 'desc' } });
    must(await changeNeed(test.book, by(), { ...ask, needId: changed.id, partId: top }));
    expect((await parts()).sort()).toEqual(['Top', 'Top', null].sort());
    const other = await aJob();
    const foreign = { ...ask, partId: await other.part('Base'), jobId };
    expect(refusedWith(await addNeed(test.book, by(), foreign))).toBe('part-gone');
  });

  it('follows its step where the step is of a part, and what is said where the step is of the whole job', async () => {
    const { jobId, part, need, parts } = await aJob();
    const [base, top] = [await part('Base'), await part('Top')];
    const step = async (partId: number | null) => {
      const made = { jobId, kind: 'assembly' as const, name: '', day: day('2026-12-10'), note: '', partId };
      const { entryId } = must(await addStep(test.book, by(), made));
      return (await test.book.read.step.findFirstOrThrow({ where: { entryId } })).id;
    };
    await need({ stepId: await step(top), partId: base });
    const ofWhole = await step(null);
    await need({ stepId: ofWhole, partId: base });
    expect((await parts()).sort()).toEqual(['Base', 'Top']);
    // Taken off with its step, it does not come back to a part that has gone since.
    must(await removeStep(test.book, by(), { stepId: ofWhole }));
    must(await removePart(test.book, by(), { partId: base }));
    expect(refusedWith(await undo('step-removed'))).toBe('part-gone');
  });

  it('keeps its part on the job, and does not come back to one that has gone', async () => {
    const { part, need, parts } = await aJob();
    const base = await part('Base');
    const needId = await need({ partId: base });
    expect(await removePart(test.book, by(), { partId: base })).toMatchObject({
      error: { code: 'part-has-needs', facts: { part: 'Base', count: 1 } },
    });
    expect(refusedWith(await undo('part-added'))).toBe('part-has-needs');
    must(await removeNeed(test.book, by(), { needId }));
    must(await undo('need-removed'));
    expect(await parts()).toEqual(['Base']);
    must(await removeNeed(test.book, by(), { needId }));
    must(await removePart(test.book, by(), { partId: base }));
    expect(refusedWith(await undo('need-removed'))).toBe('part-gone');
    must(await undo('part-removed'));
    must(await undo('need-removed'));
    expect(await parts()).toEqual(['Base']);
  });
});
