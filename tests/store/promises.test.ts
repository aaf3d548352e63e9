import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addJob } from '@/app/_server/jobs/add-job';
import { setStage } from '@/app/_server/jobs/set-stage';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { rebuildBalances } from '@/app/_server/ledger/rebuild-balances';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { promisedOf } from '@/app/_server/promises/promised-of';
import { release } from '@/app/_server/promises/release';
import { releaseAll } from '@/app/_server/promises/release-all';
import { type Reserve, reserve } from '@/app/_server/promises/reserve';
import { answerPull } from '@/app/_server/pull/answer-pull';
import { pullContainer } from '@/app/_server/pull/pull-container';
import type { Refusal } from '@/app/_server/refusal';
import { changeHold } from '@/app/_server/stock/change-hold';
import { discard } from '@/app/_server/stock/discard';
import { givePiece } from '@/app/_server/stock/give-piece';
import { loadContainer } from '@/app/_server/stock/load-container';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import type { Purpose } from '@/shared/shelf-life/types/verdict';
import { endJob } from '@/tests/support/end-of-a-job';
import { ended, startScript } from '@/tests/support/run-script';
import { aSlab, stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, refusedWith, storeOf, type TestBook, TODAY } from '@/tests/support/test-book';

const KG = 1_000_000;
const printed = (date: string) => ({ date: day(date), precision: 'day' as const, confirmed: true });

describe('what is promised', () => {
  let test: TestBook;
  let made = 0;
  const name = (word: string) => {
    made += 1;
    return `${word} ${made}`;
  };
  const tin = async (more: Parameters<typeof stocked>[1] = {}) => {
    const stock = await stocked(test.book, { ...more, product: { name: name('Resin'), ...more.product } });
    return { ...stock, label: stock.labels[0] ?? '' };
  };
  const fieldsOf = (job: string, purpose: Purpose = 'client') => ({
    name: job,
    purpose,
    client: '',
    dayOfUse: day('2026-12-12'),
    note: '',
  });
  const job = async (called = name('Job'), purpose: Purpose = 'client') =>
    must(await addJob(test.book, by(), fieldsOf(called, purpose))).jobId;
  const slab = async () => must(await receivePieces(test.book, by(), aSlab({ species: 'Elm' }))).pieces[0]?.label ?? '';
  const promise = (jobId: number, label: string, amount?: number) =>
    reserve(test.book, by(), { jobId, items: [{ label, amount }] });
  const take = (label: string, asked: number, jobId?: number) =>
    pullContainer(test.book, by(), { label, asked, jobId, purpose: 'client', dayOfUse: TODAY, seen: 'care' });
  const stockOf = async (label: string) => test.book.read.stock.findUniqueOrThrow({ where: { label } });
  const promisedTo = async (label: string) => {
    const { id } = await stockOf(label);
    const rows = await promisedOf(test.book.read, id, 'America/New_York');
    return rows.map((each) => [each.jobId, each.amount]);
  };
  const left = async (label: string) => (await loadContainer(test.book.read, label))?.left;
  const undo = (entryId: number) => reverseEntry(test.book, by(), { entryId, why: 'Mistaken' });

  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(async () => {
    expect((await rebuildBalances(test.book)).mended).toEqual([]);
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    await test.remove();
  });

  describe('of a container', () => {
    it('is an amount for a job, and the rest stays free for others', async () => {
      const { label } = await tin();
      const [desk, table] = [await job(), await job()];
      expect(must(await promise(desk, label, 2 * KG)).promised).toMatchObject([{ label, amount: 2 * KG, unit: 'mg' }]);
      must(await promise(table, label));
      expect(await promisedTo(label)).toEqual([
        [desk, 2 * KG],
        [table, 0.5 * KG],
      ]);
      expect(refusedWith(await promise(table, label, 1))).toBe('promised-elsewhere');
    });

    it('may not be taken for another job, or for none, and the refusal says who, when and how much is free', async () => {
      const { label } = await tin();
      const desk = await job('River desk');
      must(await promise(desk, label, 2 * KG));
      for (const jobId of [await job(), undefined]) {
        const refused = await take(label, 600_000, jobId);
        if (refused.ok) throw new Error('It was not refused.');
        expect(refused.error).toMatchObject({
          code: 'promised-elsewhere',
          field: 'asked',
          facts: { job: 'River desk', who: 'Ada', on: TODAY, day: '2026-12-12', free: 500_000, promised: 2 * KG },
        });
        expect(sayRefusal(refused.error).what).toMatch(
          /^2 kg of C-\w{6} is promised to another job: River desk for 12 Dec 2026, promised by Ada on 25 Nov 2026\. 500 g is free\.$/,
        );
      }
      must(await take(label, 500_000));
      expect(await left(label)).toBe(2 * KG);
    });

    it('is not offered instead of another: what is suggested to a job is what it may take', async () => {
      const { labels } = await tin({ count: 3, dates: { bestBefore: printed('2027-01-10') } });
      const [asked = '', kept = '', open = ''] = labels;
      must(await take(asked, 2_400_000));
      const desk = await job();
      must(await promise(desk, kept));
      const ask = { label: asked, purpose: 'client' as const, dayOfUse: TODAY, asked: 600_000 };
      const offered = async (jobId?: number) => {
        const answer = await answerPull(test.book, { ...ask, jobId }, NOW);
        if (!answer.ok) throw new Error(answer.error.code);
        return answer.value.verdict.instead?.containers.map((each) => each.label);
      };
      expect(await offered()).toEqual([open]);
      must(await promise(desk, open, 2_200_000));
      expect(await offered(desk)).toHaveLength(1);
      expect(await offered()).toEqual([open]);
    });

    it('is used up by its own job first; what is taken beyond it is free stock', async () => {
      const { label } = await tin();
      const desk = await job();
      must(await promise(desk, label, 1 * KG));
      must(await take(label, 400_000, desk));
      expect(await promisedTo(label)).toEqual([[desk, 600_000]]);
      must(await take(label, 900_000, desk));
      expect(await promisedTo(label)).toEqual([]);
      expect(await left(label)).toBe(1.2 * KG);
    });

    it('of a lot is asked by amount, and comes from its first to expire: the opened before the sealed', async () => {
      const { labels, lotId } = await tin({ count: 2 });
      const opened = labels[1] ?? '';
      must(await take(opened, 1 * KG));
      const desk = await job();
      const answer = must(await reserve(test.book, by(), { jobId: desk, items: [{ lotId, amount: 2 * KG }] }));
      expect(answer.promised.map((each) => [each.label, each.amount])).toEqual([
        [opened, 1.5 * KG],
        [labels[0], 0.5 * KG],
      ]);
      const more = await reserve(test.book, by(), { jobId: desk, items: [{ lotId, amount: 2.1 * KG }] });
      expect(more).toMatchObject({ error: { code: 'lot-has-too-little', facts: { free: 2 * KG } } });
    });

    it('is never one that will be past its limit on the day, held, or empty', async () => {
      const past = await tin({ dates: { bestBefore: printed('2026-12-01') } });
      const desk = await job();
      expect(await promise(desk, past.label)).toMatchObject({
        error: { code: 'not-good-on-the-day', facts: { until: '2026-12-01', day: '2026-12-12' } },
      });
      const held = await tin();
      must(await changeHold(test.book, by(), { stockId: (await stockOf(held.label)).id, hold: 'on-hold', why: 'Odd' }));
      expect(refusedWith(await promise(desk, held.label))).toBe('stop-not-overridable');
      const empty = await tin();
      must(await discard(test.book, by(), { label: empty.label, why: 'Spilt' }));
      expect(refusedWith(await promise(desk, empty.label))).toBe('already-empty');
      expect(refusedWith(await promise(desk, 'C222222'))).toBe('not-found');
    });

    it.each([0, -5, 1.5, Number.NaN])('is never %d', async (amount) => {
      const { label } = await tin();
      expect(refusedWith(await promise(await job(), label, amount))).toBe('not-an-exact-amount');
    });

    it('is all or nothing: one part that cannot be had keeps none', async () => {
      const [one, two] = [await tin(), await tin()];
      const [desk, table] = [await job(), await job()];
      must(await promise(table, two.label));
      const input: Reserve = { jobId: desk, items: [{ label: one.label }, { label: two.label, amount: 1 }] };
      expect(refusedWith(await reserve(test.book, by(), input))).toBe('promised-elsewhere');
      expect(await promisedTo(one.label)).toEqual([]);
      const twice: Reserve = {
        jobId: desk,
        items: [
          { label: one.label, amount: 2 * KG },
          { label: one.label, amount: 2 * KG },
        ],
      };
      expect(refusedWith(await reserve(test.book, by(), twice))).toBe('not-enough-left');
    });

    it('is freed in part or whole, and by all at once', async () => {
      const [one, two] = [await tin(), await tin()];
      const desk = await job();
      must(await promise(desk, one.label));
      must(await promise(desk, two.label));
      must(await release(test.book, by(), { jobId: desk, items: [{ label: one.label, amount: 500_000 }] }));
      expect(await promisedTo(one.label)).toEqual([[desk, 2 * KG]]);
      must(await release(test.book, by(), { jobId: desk, items: [{ label: one.label }] }));
      expect(refusedWith(await release(test.book, by(), { jobId: desk, items: [{ label: one.label }] }))).toBe(
        'not-promised',
      );
      expect(must(await releaseAll(test.book, by(), { jobId: desk, why: '' })).labels).toEqual([two.label]);
      expect(await promisedTo(two.label)).toEqual([]);
      expect(refusedWith(await releaseAll(test.book, by(), { jobId: desk, why: '' }))).toBe('changes-nothing');
    });

    it.each(['done', 'dropped'] as const)('is freed when its job is %s, as far as it was not used', async (state) => {
      const { label } = await tin();
      const called = name('Job');
      const jobId = await job(called);
      must(await promise(jobId, label, 2 * KG));
      must(await take(label, 0.5 * KG, jobId));
      const changed = await endJob(test.book, jobId, state === 'done' ? 'delivered' : 'dropped');
      expect(changed.freed).toEqual([label]);
      expect(await promisedTo(label)).toEqual([]);
      must(await take(label, 2 * KG));
      expect(refusedWith(await promise(jobId, label))).toBe('job-not-open');
    });
  });

  describe('and is then not there', () => {
    it('the scale is right: the newest promise gives way first, in the same entry, and who loses is named', async () => {
      const { label } = await tin();
      const [desk, table] = [await job('Desk of the two'), await job('Table of the two')];
      must(await promise(desk, label, 1.5 * KG));
      must(await promise(table, label, 1 * KG));
      const weighed = must(await weighContainer(test.book, by(), { label, left: 1.2 * KG, why: 'Scale' }));
      expect(weighed.broken).toEqual([
        { jobId: desk, job: 'Desk of the two', amount: 300_000 },
        { jobId: table, job: 'Table of the two', amount: 1 * KG },
      ]);
      expect(await promisedTo(label)).toEqual([[desk, 1.2 * KG]]);
    });

    it('weighing more, or less but enough, breaks none', async () => {
      const { label } = await tin();
      const desk = await job();
      must(await promise(desk, label, 1 * KG));
      expect(must(await weighContainer(test.book, by(), { label, left: 1 * KG, why: '' })).broken).toEqual([]);
      expect(must(await weighContainer(test.book, by(), { label, left: 2 * KG, why: '' })).broken).toEqual([]);
      expect(await promisedTo(label)).toEqual([[desk, 1 * KG]]);
    });

    it('what is thrown away takes its promises with it, of a tin and of a slab; undoing gives both back', async () => {
      const [{ label }, plank, desk] = [await tin(), await slab(), await job()];
      must(await reserve(test.book, by(), { jobId: desk, items: [{ label, amount: 700_000 }, { label: plank }] }));
      const [gone, lost] = [
        must(await discard(test.book, by(), { label, why: 'Spilt' })),
        must(await discard(test.book, by(), { label: plank, why: 'Burnt' })),
      ];
      expect(gone.broken).toMatchObject([{ jobId: desk, amount: 700_000 }]);
      expect(lost.broken).toMatchObject([{ jobId: desk, amount: 1 }]);
      expect(await promisedTo(label)).toEqual([]);
      for (const thing of [label, plank]) {
        const { entries } = await history(test.book, { stockId: (await stockOf(thing)).id });
        must(await undo(entries.find((each) => each.kind === 'discarded')?.id ?? 0));
      }
      expect(await promisedTo(label)).toEqual([[desk, 700_000]]);
      expect(await promisedTo(plank)).toEqual([[desk, 1]]);
    });
  });

  describe('is put right by a reversing entry', () => {
    it('of the promise: it is free again; of the release: it is promised again', async () => {
      const { label } = await tin();
      const desk = await job();
      const { entryId } = must(await promise(desk, label, 1 * KG));
      const released = must(await release(test.book, by(), { jobId: desk, items: [{ label }] }));
      must(await undo(released.entryId));
      expect(await promisedTo(label)).toEqual([[desk, 1 * KG]]);
      must(await undo(entryId));
      expect(await promisedTo(label)).toEqual([]);
      expect(refusedWith(await undo(entryId))).toBe('already-reversed');
    });

    it('of a pull: what was used of the promise is promised again, with the material', async () => {
      const { label } = await tin();
      const desk = await job();
      must(await promise(desk, label, 1 * KG));
      const { entryId } = must(await take(label, 1.5 * KG, desk));
      must(await undo(entryId));
      expect(await promisedTo(label)).toEqual([[desk, 1 * KG]]);
      expect(await left(label)).toBe(2.5 * KG);
    });

    it('of a pull for a job that is over: the material comes back free', async () => {
      const { label } = await tin();
      const called = name('Job');
      const jobId = await job(called);
      must(await promise(jobId, label, 1 * KG));
      const { entryId } = must(await take(label, 1 * KG, jobId));
      await endJob(test.book, jobId, 'delivered');
      const back = must(await undo(entryId));
      expect(await promisedTo(label)).toEqual([]);
      expect(await left(label)).toBe(2.5 * KG);
      expect(back.entryId).toBe(entryId);
    });

    it('but not below zero: what was used since is undone first', async () => {
      const { label } = await tin();
      const desk = await job();
      const { entryId } = must(await promise(desk, label, 1 * KG));
      const pulled = must(await take(label, 400_000, desk));
      const refused = await undo(entryId);
      expect(refused).toMatchObject({ error: { code: 'promised-since', facts: { because: 'used' } } });
      if (!refused.ok) expect(sayRefusal(refused.error).what).toContain('was used or released since');
      must(await undo(pulled.entryId));
      must(await undo(entryId));
    });

    it('and not beyond the stock: what another was promised since stays his', async () => {
      const { label } = await tin();
      const [desk, table] = [await job(), await job()];
      must(await promise(desk, label));
      const freed = must(await release(test.book, by(), { jobId: desk, items: [{ label }] }));
      must(await promise(table, label, 1));
      expect(await undo(freed.entryId)).toMatchObject({
        error: { code: 'promised-since', facts: { because: 'beyond' } },
      });
      const { entries } = await history(test.book, { stockId: (await stockOf(label)).id });
      const received = entries.find((each) => each.kind === 'received');
      expect(refusedWith(await undo(received?.id ?? 0))).toBe('promised-since');
      expect(await promisedTo(label)).toEqual([[table, 1]]);
    });

    it('and stands in the history of the thing and of the job, where it can be undone', async () => {
      const { label } = await tin();
      const desk = await job();
      must(await promise(desk, label, 1 * KG));
      for (const of of [{ stockId: (await stockOf(label)).id }, { jobId: desk }]) {
        const { entries } = await history(test.book, of);
        expect(entries[0]).toMatchObject({ kind: 'reserved', canReverse: true });
        expect(entries[0]?.reference).toMatch(/^1 kg of C-|^2 lb/);
      }
    });
  });

  describe('of a piece', () => {
    it('is the whole of it, for one job alone, and the refusal says who and when', async () => {
      const label = await slab();
      const [desk, table] = [await job('Elm desk'), await job()];
      must(await promise(desk, label));
      for (const refused of [
        await promise(table, label),
        await givePiece(test.book, by(), { label, act: 'promise', jobId: table }),
        await givePiece(test.book, by(), { label, act: 'take', jobId: table }),
      ]) {
        if (refused.ok) throw new Error('It was not refused.');
        expect(refused.error).toMatchObject({
          code: 'promised-elsewhere',
          facts: { job: 'Elm desk', who: 'Ada', on: TODAY },
        });
        expect(sayRefusal(refused.error).what).toMatch(
          /^S-\w{6} is promised to another job: Elm desk for 12 Dec 2026, promised by Ada on 25 Nov 2026\.$/,
        );
      }
      must(await release(test.book, by(), { jobId: desk, items: [{ label }] }));
      must(await promise(table, label));
    });
  });

  describe('to many who ask at once', () => {
    /** Everybody's job asks for the same: some here, the rest in three more processes at the same book. */
    const askAtOnce = async (jobs: number[], label: string, amount?: number) => {
      const children = [0, 1, 2].map((nr) =>
        startScript(
          'tests/support/children/promise-from-child.ts',
          [
            test.files.folder,
            label,
            amount === undefined ? '' : String(amount),
            jobs.filter((_, at) => at % 4 === nr).join(','),
            `child-${label}-${nr}`,
          ],
          storeOf(test.files),
        ),
      );
      const ends = children.map(ended);
      await Promise.all(
        children.map((child) => new Promise<void>((resolve) => child.stdout?.once('data', () => resolve()))),
      );
      for (const child of children) child.stdin?.write('go\n');
      const here = await Promise.all(
        jobs.filter((_, at) => at % 4 === 3).map((jobId) => promise(jobId, label, amount)),
      );
      const there = (await Promise.all(ends)).map(({ out, err }) => {
        expect(err).toBe('');
        return JSON.parse(out.replace('ready\n', '')) as Refusal[];
      });
      const said = [...there.flat(), ...here.map((each) => (each.ok ? { code: 'promised' } : each.error))];
      expect(said).toHaveLength(jobs.length);
      expect(said.filter((each) => each.code === 'promised')).toHaveLength(1);
      return said.filter((each) => each.code !== 'promised') as Refusal[];
    };

    it('the last slab goes to exactly one, and every other is told who and when', async () => {
      const label = await slab();
      const jobs = await Promise.all([...Array(24).keys()].map((nr) => job(`Wants the slab ${nr}`)));
      const refused = await askAtOnce(jobs, label);
      const owner = (await loadPiece(test.book.read, label))?.facts.promisedTo;
      expect(new Set(refused.map((each) => each.code))).toEqual(new Set(['promised-elsewhere']));
      for (const { facts } of refused) expect(facts).toMatchObject({ job: owner?.name, who: 'Ada', on: TODAY });
    });

    it('the last grams go to exactly one', async () => {
      const { label } = await tin();
      const jobs = await Promise.all([...Array(16).keys()].map((nr) => job(`Wants the grams ${nr}`)));
      const refused = await askAtOnce(jobs, label, 1.3 * KG);
      expect((await promisedTo(label)).map(([, amount]) => amount)).toEqual([1.3 * KG]);
      for (const each of refused)
        expect(each).toMatchObject({ code: 'promised-elsewhere', facts: { free: 1.2 * KG, who: 'Ada', on: TODAY } });
    });

    it('promising, taking, weighing and dropping race without promising what is not there', async () => {
      const { label } = await tin();
      const names = [...Array(6).keys()].map((nr) => `Races ${nr}`);
      const jobs = await Promise.all(names.map((each) => job(each)));
      await Promise.all([
        ...jobs.map((jobId) => promise(jobId, label, 0.6 * KG)),
        ...jobs.map((jobId) => take(label, 0.3 * KG, jobId)),
        weighContainer(test.book, by(), { label, left: 1 * KG, why: 'Scale' }),
        setStage(test.book, by(), { jobId: jobs[2] ?? 0, stage: 'dropped', reason: '' }),
        take(label, 0.2 * KG),
      ]);
      const promised = (await promisedTo(label)).reduce((sum, [, amount]) => sum + (amount ?? 0), 0);
      expect(promised).toBeLessThanOrEqual((await left(label)) ?? -1);
      expect((await proveBook(test.book.read)).differences).toEqual([]);
    });
  });

  it('a balance that was bent is named by the proof and put right from the lines', async () => {
    const { label } = await tin();
    const desk = await job();
    must(await promise(desk, label, 1 * KG));
    const { id } = await stockOf(label);
    await test.book.write((tx) =>
      tx.promised.updateMany({ where: { stockId: id }, data: { amount: 3n * BigInt(KG) } }),
    );
    const rules = (await proveBook(test.book.read)).differences.map((each) => each.rule);
    expect(rules).toEqual(['promised-equals-lines', 'promised-is-there']);
    expect((await rebuildBalances(test.book)).mended).toEqual([label]);
    expect(await promisedTo(label)).toEqual([[desk, 1 * KG]]);
  });
});
