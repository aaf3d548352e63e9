import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readBook } from '@/app/_server/book/read-book';
import { addJob } from '@/app/_server/jobs/add-job';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addNeed } from '@/app/_server/needs/add-need';
import { addPlace } from '@/app/_server/places/add-place';
import { releaseAll } from '@/app/_server/promises/release-all';
import { reserve } from '@/app/_server/promises/reserve';
import { answerPull } from '@/app/_server/pull/answer-pull';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { discard } from '@/app/_server/stock/discard';
import { givePiece } from '@/app/_server/stock/give-piece';
import { moveStock } from '@/app/_server/stock/move-stock';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { recordInspection } from '@/app/_server/stock/record-inspection';
import { recordReadings } from '@/app/_server/stock/record-readings';
import { strikeReading } from '@/app/_server/stock/strike-reading';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import { addStep } from '@/app/_server/timeline/add-step';
import { finishStep } from '@/app/_server/timeline/finish-step';
import { removeStep } from '@/app/_server/timeline/remove-step';
import { layOutRags } from '@/app/_server/watch/lay-out-rags';
import { readWatch } from '@/app/_server/watch/read-watch';
import { sayWatch } from '@/app/_server/watch/say-watch';
import { watchLines } from '@/app/_server/watch/watch-lines';
import { WATCH_LISTS } from '@/app/_server/watch/watch-list';
import type { NoteList } from '@/app/_server/watch/watch-note';
import { watchNotes } from '@/app/_server/watch/watch-notes';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { StepKind } from '@/shared/timeline/step';
import { aSlab, stocked } from '@/tests/support/stock-of-a-test';
import { by as byNow, day, freshBook, must, NOW, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const DAY_MS = 86_400_000;

describe('Watch beside its lists of containers', () => {
  let test: TestBook;
  beforeEach(async () => {
    test = await freshBook();
  });
  afterEach(() => test.remove());

  /** So many days after the day of the test. */
  const by = (daysOn = 0) => ({ ...byNow(), now: new Date(NOW.getTime() + daysOn * DAY_MS) });
  const notesOn = async (daysOn: number) => {
    const head = await readBook(test.book, by(daysOn).now);
    if (!head) throw new Error('No book.');
    return watchNotes(test.book, head);
  };
  const says = async (list: NoteList, daysOn = 0) =>
    (await notesOn(daysOn))[list].map((note) => `${note.name}: ${note.says}`);
  const job = async (name: string, dayOfUse: CalendarDate, daysOn = 0) =>
    must(await addJob(test.book, by(daysOn), { name, purpose: 'client', client: '', dayOfUse, note: '' })).jobId;
  const step = async (jobId: number, kind: StepKind, on: CalendarDate) =>
    must(await addStep(test.book, by(), { jobId, kind, name: '', day: on, note: '' }));
  const pull = async (label: string, asked = 1000, daysOn = 0) => {
    const ask = { label, purpose: 'own' as const, dayOfUse: addDays(TODAY, daysOn), asked };
    const answer = await answerPull(test.book, ask, by(daysOn).now);
    if (!answer.ok) throw new Error(answer.error.code);
    return must(await pullContainer(test.book, by(daysOn), { ...ask, seen: answer.value.verdict.word }));
  };
  const oil = async (name: string, kind: string) =>
    (await stocked(test.book, { product: { name, kind, system: undefined, colourShows: false } })).labels[0] ?? '';

  it('is quiet in a book where nothing waits', async () => {
    await stocked(test.book);
    for (const lines of Object.values(await notesOn(0))) expect(lines).toEqual([]);
  });

  describe('rags', () => {
    it('are to be laid out after an oil was taken, today and the day after, and no longer', async () => {
      await pull(await oil('Two-part oil', 'two-part-oil'));
      expect(await says('rags')).toEqual(['Two-part oil: rags to lay out']);
      expect(await says('rags', 1)).toHaveLength(1);
      expect(await says('rags', 2)).toEqual([]);
    });

    it.each([
      ['hardwax-oil', 1],
      ['oil-finish', 1],
      ['varnish', 1],
      ['waterborne', 0],
      ['lacquer', 0],
      ['shellac-mixed', 0],
      ['resin-a', 0],
    ])('of a %s: %i', async (kind, lines) => {
      await pull(await oil('A finish', kind));
      expect(await says('rags')).toHaveLength(lines);
    });

    it('are no matter of an oil that was weighed, thrown away, or put back', async () => {
      const [one, two, three] = [
        await oil('One', 'oil-finish'),
        await oil('Two', 'oil-finish'),
        await oil('Three', 'oil-finish'),
      ];
      must(await weighContainer(test.book, by(), { label: one, left: 10, why: '' }));
      must(await discard(test.book, by(), { label: two, why: 'Skinned' }));
      await pull(three);
      const entry = await test.book.read.entry.findFirstOrThrow({ where: { kind: 'pulled' } });
      must(await reverseEntry(test.book, by(), { entryId: entry.id, why: 'The wrong tin' }));
      expect(await says('rags')).toEqual([]);
    });

    it('rest once somebody says they are laid out, until the next oil, and wait again where that is reversed', async () => {
      const label = await oil('Hardwax oil', 'hardwax-oil');
      expect(refusedWith(await layOutRags(test.book, by(), {}))).toBe('no-rags-out');
      await pull(label);
      const { entryId } = must(await layOutRags(test.book, by(), {}));
      expect(await says('rags')).toEqual([]);
      expect(refusedWith(await layOutRags(test.book, by(), {}))).toBe('no-rags-out');
      must(await reverseEntry(test.book, by(), { entryId, why: 'They are in a heap' }));
      expect(await says('rags')).toHaveLength(1);
      must(await layOutRags(test.book, by(), {}));
      await pull(label, 1000, 1);
      expect(await says('rags', 1)).toHaveLength(1);
    });
  });

  describe('the bench', () => {
    it('has what is late, due today and in the next two days, by its day, each linked to its job', async () => {
      const jobId = await job('River desk', day('2026-12-20'));
      await step(jobId, 'seal', day('2026-11-22'));
      await step(jobId, 'lift', TODAY);
      await step(jobId, 'coat', day('2026-11-26'));
      await step(jobId, 'flatten', day('2026-11-27'));
      await step(jobId, 'delivery', day('2026-11-28'));
      expect(await says('bench')).toEqual([
        'Seal coat: 3 days late',
        'Lift: due today',
        'Coat: due tomorrow',
        'Flatten: due in 2 days',
      ]);
      const { bench } = await notesOn(0);
      expect(bench.map(({ word }) => word)).toEqual(['stop', 'care', 'care', 'care']);
      expect(new Set(bench.map(({ id }) => id)).size).toBe(bench.length);
      expect(new Set(bench.map(({ href }) => href))).toEqual(new Set([`/jobs/${jobId}`]));
    });

    it('says what may be demoulded from its day on, and not while a lift of it is still to be poured', async () => {
      const jobId = await job('River desk', day('2026-12-20'));
      await step(jobId, 'demould', TODAY);
      expect(await says('bench')).toEqual(['Demould: may be demoulded']);
      expect(await says('bench', 4)).toEqual(['Demould: may be demoulded']);
      await step(jobId, 'lift', day('2026-12-01'));
      expect(await says('bench')).toEqual([]);
    });

    it('has no step that was taken off, and none of a job that is dropped', async () => {
      const jobId = await job('River desk', day('2026-12-20'));
      await step(jobId, 'flatten', TODAY);
      const { id } = await test.book.read.step.findFirstOrThrow();
      must(await removeStep(test.book, by(), { stepId: id }));
      const removed = await test.book.read.entry.findFirstOrThrow({ orderBy: { id: 'desc' } });
      expect(await says('bench')).toEqual([]);
      must(await reverseEntry(test.book, by(), { entryId: removed.id, why: 'It is needed' }));
      expect(await says('bench')).toHaveLength(1);
      await test.book.write((tx) => tx.job.update({ where: { id: jobId }, data: { state: 'dropped' } }));
      expect(await says('bench')).toEqual([]);
    });
  });

  it('names a job that is promised for a day before its cure ends, and by how much', async () => {
    const jobId = await job('River desk', day('2026-12-01'));
    await step(jobId, 'cure', day('2026-12-24'));
    await test.book.write((tx) => tx.job.update({ where: { id: jobId }, data: { dueOn: '2026-12-22' } }));
    expect(await says('due')).toEqual(['River desk: 2 days too early']);
    await test.book.write((tx) => tx.job.update({ where: { id: jobId }, data: { dueOn: '2026-12-24' } }));
    expect(await says('due')).toEqual([]);
  });

  describe('what expires before its planned use', () => {
    it('is a promised container whose limit ends before the job’s day, with the money at risk', async () => {
      const { labels } = await stocked(test.book, { costMinor: 10_000 });
      const jobId = await job('Bar top', day('2027-01-10'));
      must(await reserve(test.book, by(), { jobId, items: [{ label: labels[0] ?? '', amount: 1_250_000 }] }));
      expect(await says('planned')).toEqual([]);
      await test.book.write((tx) => tx.job.update({ where: { id: jobId }, data: { dayOfUse: '2027-01-13' } }));
      const [note] = (await notesOn(0)).planned;
      expect(note).toMatchObject({ says: '3 days short', word: 'stop', href: `/containers/${labels[0]}` });
      expect(note?.why).toMatch(/^Good to Jan 10, 2027\. .*promised to Bar top for Jan 13, 2027, \$50\.00 at risk\.$/);
    });

    it('is a need that what is on hand covers today and not on its day', async () => {
      const { productId } = await stocked(test.book);
      const jobId = await job('Bar top', day('2027-02-01'));
      const entry = await test.book.read.entry.findFirstOrThrow({ orderBy: { id: 'desc' } });
      const need = (amount: bigint) =>
        test.book.write((tx) =>
          tx.need.create({ data: { jobId, entryId: entry.id, kind: 'material', productId, unit: 'mg', amount } }),
        );
      await need(2_600_000n);
      // More than there is at all is short: that is the job's page's matter, not a date's.
      expect(await says('planned')).toEqual([]);
      await need(2_000_000n);
      expect(await says('planned')).toEqual(['Deep-pour resin, part A: not good on the day']);
    });

    it('is such a need again once what was promised for it is let go, and not while it is promised or done', async () => {
      const { productId, labels } = await stocked(test.book, { count: 2 });
      const [label = ''] = labels;
      const jobId = await job('Bar top', day('2027-02-01'));
      await step(jobId, 'assembly', day('2027-02-01'));
      const { id: stepId } = await test.book.read.step.findFirstOrThrow();
      const amount = 2_000_000;
      must(
        await addNeed(test.book, by(), {
          jobId,
          kind: 'product',
          productId,
          amount,
          unit: 'mg',
          surface: '',
          stepId,
          note: '',
        }),
      );
      const need = await test.book.read.need.findFirstOrThrow();
      const notGood = 'Deep-pour resin, part A: not good on the day';
      expect(await says('planned')).toEqual([notGood]);
      // Promised, it is the tin that is short of its day; half of it promised, half the need is open.
      const promise = (some: number) =>
        test.book.write(async (tx) => {
          const { id: entryId } = await tx.entry.findFirstOrThrow({ orderBy: { id: 'desc' }, select: { id: true } });
          const { id: stockId } = await tx.stock.findUniqueOrThrow({ where: { label }, select: { id: true } });
          await tx.promiseLine.create({ data: { entryId, jobId, stockId, needId: need.id, delta: BigInt(some) } });
          const { count } = await tx.promised.updateMany({
            where: { jobId, stockId },
            data: { amount: { increment: some } },
          });
          if (count === 0) await tx.promised.create({ data: { jobId, stockId, amount: BigInt(some) } });
        });
      await promise(amount);
      expect(await says('planned')).toEqual(['Deep-pour resin, part A: 22 days short']);
      await promise(-amount / 2);
      const { planned } = await notesOn(0);
      expect(planned.map(({ says: words }) => words)).toEqual(['22 days short', 'not good on the day']);
      expect(planned[1]?.why).toMatch(/^Still needed on Feb 1, 2027: 2 lb 3\.3 oz\./);
      must(await releaseAll(test.book, by(), { jobId, why: '' }));
      expect(await says('planned')).toEqual([notGood]);
      const { entryId } = must(await finishStep(test.book, by(), { stepId, doneOn: TODAY, reason: '' }));
      expect(await says('planned')).toEqual([]);
      must(await reverseEntry(test.book, by(), { entryId, why: 'Another job' }));
      // What was pulled for it is used: of the rest what is free is enough for now only.
      await pull(label, 1_500_000);
      expect(await says('planned')).toEqual([notGood]);
      const ask = { label: labels[1] ?? '', jobId, purpose: 'client' as const, dayOfUse: day('2026-11-25') };
      must(await pullContainer(test.book, by(), { ...ask, asked: amount, seen: 'care' }));
      expect(await says('planned')).toEqual([]);
    });
  });

  it('asks to look at a kept sample from its day on, and no more once it is gone', async () => {
    await job('Bar top', day('2026-12-20'));
    const entry = await test.book.read.entry.findFirstOrThrow({ orderBy: { id: 'desc' } });
    const { id } = await test.book.write((tx) =>
      tx.sample.create({ data: { entryId: entry.id, name: 'Cup 3', madeOn: day('2026-05-01'), lookOn: '2026-11-26' } }),
    );
    expect(await says('samples')).toEqual([]);
    expect(await says('samples', 1)).toEqual(['Cup 3: look today']);
    expect(await says('samples', 3)).toEqual(['Cup 3: 2 days late']);
    await test.book.write((tx) => tx.sample.update({ where: { id }, data: { goneById: entry.id } }));
    expect(await says('samples', 3)).toEqual([]);
  });

  describe('moisture to read', () => {
    const wood = async (mcTenths: number | undefined, more = {}) =>
      must(
        await receivePieces(
          test.book,
          by(),
          aSlab({ reading: mcTenths === undefined ? undefined : { mcTenths, meter: 'pins', spot: '' }, ...more }),
        ),
      ).pieces[0]?.label ?? '';

    it('is asked of promised wood after more than seven days, and of wood that dries after more than thirty', async () => {
      const barn = must(await addPlace(test.book, by(), { name: 'Barn', kind: 'room' })).label;
      const rack = must(await addPlace(test.book, by(), { name: 'Rack', kind: 'rack', parentLabel: barn })).label;
      const labels = [await wood(90), await wood(160), await wood(170), await wood(90)];
      must(await moveStock(test.book, by(), { labels, placeLabel: rack }));
      const jobId = await job('Bar top', day('2027-03-01'));
      must(await givePiece(test.book, by(), { label: labels[0] ?? '', act: 'promise', jobId }));
      expect(await says('readings', 7)).toEqual([]);
      expect(await says('readings', 8)).toEqual(['Walnut slab: read 8 days ago']);
      expect(await says('readings', 30)).toHaveLength(1);
      expect(await says('readings', 31)).toEqual(['Walnut slab: read 31 days ago', 'Barn: 2 to read']);
    });

    it('is asked at once of what was never read, and not of a sheet', async () => {
      await wood(undefined);
      await wood(undefined, { form: 'sheet', flags: [] });
      expect(await says('readings')).toEqual(['Wood in no place: 1 to read']);
    });

    it('does not count a reading that was struck out, and counts it again where that was reversed', async () => {
      const label = await wood(undefined);
      must(
        await recordReadings(test.book, by(), { label, takenOn: TODAY, meter: 'pins', readings: [{ mcTenths: 90 }] }),
      );
      expect(await says('readings')).toEqual([]);
      const reading = await test.book.read.reading.findFirstOrThrow();
      must(await strikeReading(test.book, by(), { readingId: reading.id, label, why: 'Wrong board' }));
      expect(await says('readings')).toHaveLength(1);
      const struck = await test.book.read.entry.findFirstOrThrow({ where: { kind: 'reading-struck' } });
      must(await reverseEntry(test.book, by(), { entryId: struck.id, why: 'It was right' }));
      expect(await says('readings')).toEqual([]);
    });
  });

  it('names each thing that is kept and not touched, whatever else is written of its job', async () => {
    const { labels } = await stocked(test.book, { count: 2 });
    const [kept = '', used = ''] = labels;
    const jobId = await job('Bar top', day('2027-01-05'));
    await job('Nothing kept', day('2027-01-05'));
    for (const label of [kept, used]) must(await reserve(test.book, by(), { jobId, items: [{ label, amount: 2000 }] }));
    expect(await says('idle', 29)).toEqual([]);
    // Steps and pulls of its job say nothing of a tin that nobody takes from.
    must(await addStep(test.book, by(25), { jobId, kind: 'coat', name: '', day: day('2027-01-05'), note: '' }));
    const ask = { label: used, jobId, purpose: 'client' as const, dayOfUse: day('2027-01-05'), asked: 1000 };
    const answer = await answerPull(test.book, ask, by(25).now);
    if (!answer.ok) throw new Error(answer.error.code);
    must(await pullContainer(test.book, by(25), { ...ask, seen: answer.value.verdict.word }));
    const { idle } = await notesOn(30);
    expect(idle).toMatchObject([
      { name: 'Deep-pour resin, part A', says: 'at rest for 30 days', href: `/containers/${kept}`, word: 'care' },
    ]);
    expect(idle[0]?.why).toBe('0.07 oz promised to Bar top since Nov 25, and nobody touched it.');
    // The day after its job's day everything that is still kept is named.
    expect(await says('idle', 42)).toEqual([
      'Deep-pour resin, part A: its job’s day has passed',
      'Deep-pour resin, part A: its job’s day has passed',
    ]);
  });

  it('asks for a test again in the two weeks before the one it rests on ends, and after, instead of its date', async () => {
    const { labels, lotId } = await stocked(test.book, {
      dates: { bestBefore: { date: day('2026-11-01'), precision: 'day', confirmed: true } },
      costMinor: 8000,
    });
    must(
      await recordInspection(test.book, by(), {
        lotId,
        kind: 'test-pour',
        madeOn: TODAY,
        passed: true,
        validUntil: day('2026-12-20'),
        method: '100 g in a cup',
        note: 'Hard',
      }),
    );
    const listOn = async (daysOn: number) => {
      const head = await readBook(test.book, by(daysOn).now);
      if (!head) throw new Error('No book.');
      const { lists } = await readWatch(test.book, head);
      return WATCH_LISTS.filter((list) => lists[list].groups.some(({ line }) => line.label === labels[0]));
    };
    expect(await listOn(10)).toEqual(['expiring']);
    expect(await listOn(11)).toEqual(['retest']);
    expect(await listOn(40)).toEqual(['retest']);
    const head = await readBook(test.book, NOW);
    expect(head && (await readWatch(test.book, head)).lists.expiring.costMinor).toBe(8000);
  });

  it('counts what it has in its sentence, and tells the bell each line under a name that stays', async () => {
    await pull(await oil('Two-part oil', 'two-part-oil'));
    const jobId = await job('River desk', day('2026-12-20'));
    await step(jobId, 'lift', TODAY);
    const none = Object.fromEntries(WATCH_LISTS.map((list) => [list, { containers: 0 }])) as never;
    expect(sayWatch({ lists: none, heldPieceCount: 0 }, await notesOn(0))).toBe(
      '1 finish with rags to lay out, 1 step at the bench.',
    );
    const lines = async () => {
      const head = await readBook(test.book, NOW);
      if (!head) throw new Error('No book.');
      return watchLines(test.book, head);
    };
    const first = await lines();
    expect(first.slice(0, 2).map(({ words }) => words)).toEqual(['Two-part oil: rags to lay out', 'Lift: due today']);
    expect(new Set(first.map(({ id }) => id)).size).toBe(first.length);
    expect(await lines()).toEqual(first);
  });
});
