import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addJob } from '@/app/_server/jobs/add-job';
import { jobPage, listJobs, loadJob } from '@/app/_server/jobs/read-jobs';
import { setStage } from '@/app/_server/jobs/set-stage';
import { history } from '@/app/_server/ledger/history';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { givePiece } from '@/app/_server/stock/give-piece';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { sayAway, sayWhose } from '@/app/(shop)/jobs/_ui/say-job';
import { changeJobSchema, jobSchema } from '@/app/(shop)/jobs/schema';
import { endJob } from '@/tests/support/end-of-a-job';
import { by, day, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const DESK = { name: 'Desk', purpose: 'client' as const, client: 'Marlow', dayOfUse: day('2026-11-01'), note: '' };

describe('a job and its wood', () => {
  let test: TestBook;
  let labels: string[] = [];
  let jobId = 0;
  beforeAll(async () => {
    test = await freshBook();
    const width = 700_000_000;
    const received = must(
      await receivePieces(test.book, by(), {
        form: 'board',
        species: 'Ash',
        count: 2,
        lengthNm: 2_000_000_000,
        widthStartNm: width,
        widthMiddleNm: width,
        widthEndNm: width,
        thicknessNm: 30_000_000,
        flags: [],
        flitch: '',
        receivedOn: TODAY,
        note: '',
      }),
    );
    labels = received.pieces.map((piece) => piece.label);
    // A day of use that has passed is taken as it is: the page warns, the book does not refuse.
    jobId = must(await addJob(test.book, by(), DESK)).jobId;
  });
  afterAll(() => test.remove());

  const [promised, taken] = [() => labels[0] ?? '', () => labels[1] ?? ''];
  const holder = async (label: string) => (await loadPiece(test.book.read, label))?.facts.promisedTo?.name;

  it('is promised a piece that no other job may then have', async () => {
    must(await givePiece(test.book, by(), { label: promised(), act: 'promise', jobId }));
    must(await givePiece(test.book, by(), { label: taken(), act: 'take', jobId }));
    const other = must(await addJob(test.book, by(), { ...DESK, name: 'Bench' }));
    const give = { label: promised(), act: 'take' as const, jobId: other.jobId };
    expect(refusedWith(await givePiece(test.book, by(), give))).toBe('promised-elsewhere');
    expect(await holder(promised())).toBe('Desk');
    const page = await jobPage(test.book, jobId);
    expect(page?.pieces.map((piece) => piece.facts.inStock).sort()).toEqual([false, true]);
  });

  it('frees what is promised and not taken when it is done, and leaves the open list', async () => {
    const done = await endJob(test.book, jobId, 'delivered');
    expect(done.freed).toEqual([promised()]);
    expect(await holder(promised())).toBeUndefined();
    expect((await listJobs(test.book, 'open')).map((job) => job.name)).toEqual(['Bench']);
    expect((await listJobs(test.book, 'all')).map((job) => job.state).sort()).toEqual(['done', 'open']);
    expect((await loadJob(test.book.read, jobId))?.state).toBe('done');
    expect(await loadJob(test.book.read, 4711)).toBeUndefined();
  });

  it('is given nothing more once it is done, and its pieces are not given back by undoing that', async () => {
    for (const act of ['promise', 'take'] as const) {
      expect(await givePiece(test.book, by(), { label: promised(), act, jobId })).toMatchObject({
        error: { code: 'job-not-open', field: 'jobId', facts: { job: 'Desk', state: 'done' } },
      });
    }
    const { id } = await test.book.read.entry.findFirstOrThrow({
      where: { kind: 'job-stage-set', jobId },
      orderBy: { id: 'desc' },
    });
    const undone = await reverseEntry(test.book, by(), { entryId: id, why: 'Not done yet' });
    expect(refusedWith(undone)).toBe('change-the-job-instead');
    const { entries } = await history(test.book, { jobId });
    const shown = entries.filter((entry) => entry.kind === 'job-stage-set');
    expect(shown.some((entry) => entry.movements.length > 0)).toBe(true);
    expect(shown.map((entry) => entry.canReverse)).toEqual(shown.map(() => false));
    expect(entries.find((entry) => entry.kind === 'piece-promised')?.canReverse).toBe(true);
    if (!undone.ok) expect(sayRefusal(undone.error).todo).toContain('Change the job instead');
    expect(await holder(promised())).toBeUndefined();
    expect((await loadJob(test.book.read, jobId))?.state).toBe('done');
  });

  it('is not promised a piece again, by undoing, once it is done', async () => {
    const fields = { ...DESK, name: 'Stool' };
    const stool = must(await addJob(test.book, by(), fields)).jobId;
    must(await givePiece(test.book, by(), { label: promised(), act: 'promise', jobId: stool }));
    const freed = must(await givePiece(test.book, by(), { label: promised(), act: 'free' }));
    await endJob(test.book, stool, 'dropped');
    const undo = () => reverseEntry(test.book, by(), { entryId: freed.entryId, why: 'Needed after all' });
    expect(refusedWith(await undo())).toBe('job-not-open');
    expect(await holder(promised())).toBeUndefined();
    must(await setStage(test.book, by(), { jobId: stool, stage: 'agreed', reason: '' }));
    must(await undo());
    expect(await holder(promised())).toBe('Stool');
    await endJob(test.book, stool, 'delivered');
  });

  it('gives a promise that can be undone by the entry it names', async () => {
    const other = (await listJobs(test.book, 'open'))[0];
    const given = must(await givePiece(test.book, by(), { label: promised(), act: 'promise', jobId: other?.id }));
    must(await reverseEntry(test.book, by(), { entryId: given.entryId, why: 'Wrong job' }));
    expect(await holder(promised())).toBeUndefined();
  });
});

describe('the form of a job', () => {
  it('takes a day in the past and trims names', () => {
    expect(jobSchema.parse({ ...DESK, name: ' Desk ' })).toEqual(DESK);
  });

  it.each([
    { ...DESK, name: '  ' },
    { ...DESK, dayOfUse: '2026-02-30' },
    { ...DESK, purpose: 'friend' },
    { ...DESK, note: 'x'.repeat(2001) },
  ])('refuses what cannot be: %o', (bad) => {
    expect(jobSchema.safeParse(bad).success).toBe(false);
  });

  it('says what it was opened on, and never where the job stands', () => {
    const change = { ...DESK, jobId: 1 };
    expect(changeJobSchema.safeParse(change).success).toBe(false);
    const sent = { ...change, was: DESK, state: 'dropped', stage: 'dropped' };
    expect(changeJobSchema.parse(sent)).toEqual({ ...change, was: DESK });
  });

  it('says whose it is and how far away', () => {
    expect(sayWhose(DESK)).toBe('For Marlow');
    expect(sayWhose({ purpose: 'client', client: '' })).toBe('Client’s piece');
    expect([day('2026-11-20'), TODAY, day('2026-12-19')].map((one) => sayAway(one, TODAY))).toEqual([
      '5 days ago',
      'today',
      'in 24 days',
    ]);
  });
});
