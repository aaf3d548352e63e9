import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addJob } from '@/app/_server/jobs/add-job';
import { setStage } from '@/app/_server/jobs/set-stage';
import { history } from '@/app/_server/ledger/history';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addPlace } from '@/app/_server/places/add-place';
import { noteTemperature } from '@/app/_server/places/note-temperature';
import { answerPull } from '@/app/_server/pull/answer-pull';
import { type PullContainer, pullContainer } from '@/app/_server/pull/pull-container';
import { changeHold } from '@/app/_server/stock/change-hold';
import { correctLotDates } from '@/app/_server/stock/correct-lot-dates';
import type { KeptPhoto } from '@/app/_server/stock/keep-photo';
import { loadContainer } from '@/app/_server/stock/load-container';
import { noteCondition } from '@/app/_server/stock/note-condition';
import { openContainer } from '@/app/_server/stock/open-container';
import { type RecordInspection, recordInspection } from '@/app/_server/stock/record-inspection';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { endJob } from '@/tests/support/end-of-a-job';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const printed = (date: string) => ({ date: day(date), precision: 'day' as const, confirmed: true });

describe('taking from a container', () => {
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
  const job = async (purpose: 'client' | 'own' | 'test' = 'client', dayOfUse = TODAY) =>
    must(await addJob(test.book, by(), { name: name('Job'), purpose, client: '', dayOfUse, note: '' })).jobId;
  const ask = (label: string, more: Partial<PullContainer> = {}): PullContainer => ({
    label,
    purpose: 'client',
    dayOfUse: TODAY,
    asked: 100_000,
    seen: 'care',
    ...more,
  });
  const pull = (label: string, more: Partial<PullContainer> = {}) => pullContainer(test.book, by(), ask(label, more));
  const answer = async (label: string, more: Partial<PullContainer> = {}) => {
    const result = await answerPull(test.book, ask(label, more), NOW);
    if (!result.ok) throw new Error(result.error.code);
    return result.value;
  };
  const standing = async (label: string) => (await loadContainer(test.book.read, label))?.candidate.container;
  const codesOf = async (label: string, more: Partial<PullContainer> = {}) =>
    (await answer(label, more)).verdict.reasons.map((each) => each.code);

  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(() => test.remove());

  it('opens a sealed one on the day, and not its sister; a refused pull opens nothing', async () => {
    const { labels } = await tin({ count: 2 });
    const [label = '', sister = ''] = labels;
    expect(refusedWith(await pull(label, { asked: 9_000_000 }))).toBe('not-enough-left');
    expect((await standing(label))?.opened).toBeUndefined();
    must(await pull(label));
    expect((await standing(label))?.opened).toEqual({ on: TODAY, sureness: 'known' });
    expect((await standing(sister))?.opened).toBeUndefined();
  });

  it('leaves the opened day of an open one as it is, guess and all', async () => {
    const { label } = await tin();
    must(await openContainer(test.book, by(), { label, opened: { on: day('2026-11-01'), sureness: 'guessed' } }));
    must(await pull(label));
    expect((await standing(label))?.opened).toEqual({ on: '2026-11-01', sureness: 'guessed' });
  });

  it('takes the purpose from the job, whatever the asker says', async () => {
    const { label } = await tin({ dates: { bestBefore: printed('2026-11-01') } });
    const client = await job('client');
    expect(refusedWith(await pull(label, { jobId: client, purpose: 'test' }))).toBe('verdict-changed');
    must(await pull(label, { jobId: await job('test'), purpose: 'client' }));
  });

  it('shows a worse answer than the one seen before anything is written', async () => {
    const { label } = await tin();
    must(await noteCondition(test.book, by(), { label, conditions: ['crystals'], why: '' }));
    expect(refusedWith(await pull(label, { seen: 'use' }))).toBe('verdict-changed');
    expect((await standing(label))?.left).toBe(2_500_000);
    expect(must(await pull(label, { seen: 'care' })).word).toBe('care');
  });

  it('writes a better answer than the one seen', async () => {
    const { label } = await tin();
    expect(must(await pull(label, { seen: 'stop' })).word).toBe('use');
  });

  it('takes nothing for a day of use that has passed, and judges it for today', async () => {
    const { label } = await tin({ dates: { bestBefore: printed('2026-11-20') } });
    const dayOfUse = day('2026-11-01');
    expect((await answer(label, { dayOfUse })).verdict).toMatchObject({ word: 'stop', judgedFor: TODAY });
    expect(await pull(label, { dayOfUse })).toMatchObject({ error: { code: 'day-in-the-past', field: 'dayOfUse' } });
    const slipped = await job('client', dayOfUse);
    expect(refusedWith(await pull(label, { jobId: slipped, dayOfUse, seen: 'stop' }))).toBe('day-in-the-past');
    expect(refusedWith(await pull(label, { jobId: slipped }))).toBe('verdict-changed');
    expect((await standing(label))?.left).toBe(2_500_000);
  });

  it.each(['done', 'dropped'] as const)('gives nothing to a job that is %s', async (state) => {
    const { label } = await tin();
    const fields = { name: name('Job'), purpose: 'client' as const, client: '', dayOfUse: TODAY, note: '' };
    const { jobId } = must(await addJob(test.book, by(), fields));
    await endJob(test.book, jobId, state === 'done' ? 'delivered' : 'dropped');
    const refused = await pull(label, { jobId });
    expect(refused).toMatchObject({ error: { code: 'job-not-open', field: 'jobId', facts: { state } } });
    if (!refused.ok)
      expect(sayRefusal(refused.error).what).toBe(`${fields.name} is ${state}: nothing more is given to it.`);
    expect((await standing(label))?.left).toBe(2_500_000);
    must(await setStage(test.book, by(), { jobId, stage: state === 'done' ? 'making' : 'agreed', reason: '' }));
    must(await pull(label, { jobId }));
  });

  describe('found by weighing', () => {
    const whyOf = async (stockId: number) => (await history(test.book, { stockId })).entries[0]?.why;

    it('is computed again by the density, and says so in the history', async () => {
      const { label, containers } = await tin({ size: 2_000_000, product: { unit: 'uL', packageSize: 2_000_000 } });
      const weighed = { beforeMg: 2_410_000, afterMg: 1_980_000 };
      // 430 g at 1100 g/L.
      const asked = 390_909;
      const wrong = await pull(label, { asked: 390_000, weighed });
      expect(wrong).toMatchObject({ error: { code: 'weighing-differs', facts: { used: asked, asked: 390_000 } } });
      if (!wrong.ok) expect(sayRefusal(wrong.error).what).toContain('391 mL');
      expect(must(await pull(label, { asked, weighed })).left).toBe(2_000_000 - asked);
      expect(await whyOf(containers[0]?.stockId ?? 0)).toBe(
        'weighed 2.41 kg before, 1.98 kg after, computed by density 1 100 g/L',
      );
    });

    it('refuses weights that cannot be, in the words of the scale', async () => {
      const { label } = await tin();
      const refused = await pull(label, { weighed: { afterMg: 100_000 } });
      expect(refused).toMatchObject({ error: { code: 'weighing-does-not-fit', field: 'asked' } });
      if (!refused.ok) expect(sayRefusal(refused.error).what).toContain('less than the empty container weighs');
    });

    it('keeps the weights beside the reason of an override', async () => {
      const { label, lotId, containers } = await tin({ dates: { bestBefore: printed('2026-11-01') } });
      const poured = by();
      const pour = { lotId, kind: 'test-pour' as const, madeOn: TODAY, passed: true, method: '', note: 'Hard' };
      must(await recordInspection(test.book, poured, pour));
      const { id } = await test.book.read.inspection.findFirstOrThrow({ where: { lotId } });
      const override = { reason: 'Only a sample', inspectionId: id };
      must(await pull(label, { seen: 'stop', override, asked: 400_000, weighed: { afterMg: 2_280_000 } }));
      expect(await whyOf(containers[0]?.stockId ?? 0)).toBe(
        'Only a sample; not weighed before, container 180 g, weighed 2.28 kg after',
      );
    });
  });

  describe('taken on another day', () => {
    const received = (more: Parameters<typeof tin>[0] = {}) => tin({ receivedOn: day('2026-11-10'), ...more });

    it('happened on that day and was written on this one, and opens a sealed container on that day', async () => {
      const { label, containers } = await received();
      const pulled = must(await pull(label, { happenedOn: day('2026-11-20') }));
      expect(pulled).toMatchObject({ opened: true, takenOn: '2026-11-20' });
      expect((await standing(label))?.opened).toEqual({ on: '2026-11-20', sureness: 'known' });
      const { entries } = await history(test.book, { stockId: containers[0]?.stockId });
      // Noon in New York.
      expect(entries[0]).toMatchObject({ happenedAt: '2026-11-20T17:00:00.000Z', writtenAt: NOW.toISOString() });
    });

    it('was open on that day, whatever later day it was thought to be opened on', async () => {
      const { label } = await received();
      must(await pull(label));
      must(await pull(label, { happenedOn: day('2026-11-18') }));
      expect((await standing(label))?.opened).toEqual({ on: '2026-11-18', sureness: 'known' });
    });

    it('is not after today and not before the container arrived', async () => {
      const { label } = await received();
      const early = await pull(label, { happenedOn: day('2026-11-09') });
      expect(early).toMatchObject({ error: { code: 'happened-before-it-arrived', field: 'happenedOn' } });
      if (!early.ok) expect(sayRefusal(early.error).what).toContain('came in on 10 Nov 2026');
      expect(await pull(label, { happenedOn: day('2026-11-26') })).toMatchObject({ error: { field: 'happenedOn' } });
      must(await pull(label, { happenedOn: day('2026-11-10') }));
    });

    it('is today’s own moment when the day given is today', async () => {
      const { label, containers } = await received();
      must(await pull(label, { happenedOn: TODAY }));
      const { entries } = await history(test.book, { stockId: containers[0]?.stockId });
      expect(entries[0]?.happenedAt).toBe(NOW.toISOString());
    });
  });

  describe('parts A and B', () => {
    const part = (letter: 'A' | 'B', system: string) =>
      tin({ product: { kind: `resin-${letter.toLowerCase()}`, system: { name: system, part: letter } } });

    it('stops a part of another system, by what the job was given before', async () => {
      const a = await part('A', 'Deep');
      const wrong = await part('B', 'Coat');
      const right = await part('B', 'Deep');
      const jobId = await job();
      must(await pull(a.label, { jobId }));
      expect(await codesOf(wrong.label, { jobId })).toContain('wrong-system');
      expect((await answer(wrong.label, { jobId })).verdict.override).toEqual({
        allowed: false,
        because: ['wrong-system'],
      });
      expect(refusedWith(await pull(wrong.label, { jobId, seen: 'stop' }))).toBe('stop-not-overridable');
      expect(must(await pull(right.label, { jobId, seen: 'use' })).word).toBe('use');
    });

    it('looks no longer at a pull that was reversed, nor at another job', async () => {
      const a = await part('A', 'Clear');
      const other = await part('B', 'Tinted');
      const jobId = await job();
      const asked = by();
      must(await pullContainer(test.book, asked, ask(a.label, { jobId })));
      expect(await codesOf(other.label, { jobId })).toContain('wrong-system');
      expect(await codesOf(other.label, { jobId: await job() })).not.toContain('wrong-system');
      const { id } = await test.book.read.entry.findUniqueOrThrow({ where: { key: asked.key } });
      must(await reverseEntry(test.book, by(), { entryId: id, why: 'Wrong job' }));
      expect(await codesOf(other.label, { jobId })).not.toContain('wrong-system');
    });

    it('pairs by the label given where no job says', async () => {
      const a = await part('A', 'Slow');
      const b = await part('B', 'Fast');
      expect(await codesOf(b.label, { pairedLabel: a.label })).toContain('wrong-system');
      expect(refusedWith(await pull(b.label, { pairedLabel: a.label, seen: 'stop' }))).toBe('stop-not-overridable');
      expect(await codesOf(b.label)).not.toContain('wrong-system');
    });
  });

  describe('a Stop used anyway', () => {
    const photo: KeptPhoto = { file: 'pour.jpg', width: 10, height: 10, bytes: 10, caption: '' };
    const past = () => tin({ count: 2, dates: { bestBefore: printed('2026-11-01') } });
    const pour = async (lotId: number, more: Partial<RecordInspection> = {}) => {
      const asked = by();
      must(
        await recordInspection(test.book, asked, {
          lotId,
          kind: 'test-pour',
          madeOn: TODAY,
          passed: true,
          method: '100 g in a cup',
          note: 'Hard after a day',
          ...more,
        }),
      );
      const { inspections } = await test.book.read.entry.findUniqueOrThrow({
        where: { key: asked.key },
        select: { inspections: { select: { id: true } } },
      });
      return inspections[0]?.id ?? 0;
    };
    const anyway = (label: string, inspectionId: number, reason = 'Only a sample') =>
      pull(label, { seen: 'stop', override: { reason, inspectionId } });

    it('needs a reason and a passed test pour of this container or of its lot', async () => {
      const { label, lotId, labels } = await past();
      expect(refusedWith(await pull(label, { seen: 'stop' }))).toBe('override-needs-reason');
      expect(refusedWith(await anyway(label, 99_999))).toBe('override-needs-test-pour');
      const ofLot = await pour(lotId);
      expect(refusedWith(await anyway(label, ofLot, '  '))).toBe('override-needs-reason');
      expect(must(await anyway(label, ofLot)).overridden).toBe(true);
      expect(must(await anyway(labels[1] ?? '', ofLot)).overridden).toBe(true);
    });

    it('does not rest on a test pour of a sister, of another lot, or on one that failed', async () => {
      const { label, lotId, labels } = await past();
      const ofSister = await pour(lotId, { containerLabel: labels[1] });
      expect(refusedWith(await anyway(label, ofSister))).toBe('override-needs-test-pour');
      expect(must(await anyway(labels[1] ?? '', ofSister)).overridden).toBe(true);
      const elsewhere = await past();
      expect(refusedWith(await anyway(label, await pour(elsewhere.lotId)))).toBe('override-needs-test-pour');
      expect(refusedWith(await anyway(label, await pour(lotId, { passed: false })))).toBe('test-pour-not-passed');
    });

    it('does not rest on a test pour made while the limit was still ahead', async () => {
      const { label, lotId } = await past();
      const early = await anyway(label, await pour(lotId, { madeOn: day('2026-11-01') }));
      expect(early).toMatchObject({
        error: { code: 'test-pour-too-old', field: 'override', facts: { since: '2026-11-02', because: 'past-limit' } },
      });
      if (!early.ok) expect(sayRefusal(early.error).todo).toBe('Record one that was poured on 2 Nov 2026 or later.');
      expect((await standing(label))?.left).toBe(2_500_000);
      expect(must(await anyway(label, await pour(lotId, { madeOn: day('2026-11-02') }))).overridden).toBe(true);
    });

    it('does not rest on one made before an opened life began that has ended, nor on one of long ago', async () => {
      const aged = { openedLife: { count: 1, unit: 'week' as const } };
      const { label, lotId } = await tin({ product: aged, receivedOn: day('2026-06-01') });
      must(await openContainer(test.book, by(), { label, opened: { on: day('2026-11-20'), sureness: 'known' } }));
      const later = { dayOfUse: day('2026-11-28'), seen: 'stop' as const };
      const before = await pour(lotId, { madeOn: day('2026-11-19') });
      const override = (inspectionId: number) => ({ reason: 'Agreed', inspectionId });
      expect(refusedWith(await pull(label, { ...later, override: override(before) }))).toBe('test-pour-too-old');
      const since = await pour(lotId, { madeOn: day('2026-11-20') });
      must(await pull(label, { ...later, override: override(since) }));

      const undated = { statedLife: undefined, openedLife: undefined };
      const unknown = await tin({ dates: {}, product: undated, receivedOn: day('2026-06-01') });
      const old = await pour(unknown.lotId, { madeOn: day('2026-08-26') });
      expect(refusedWith(await anyway(unknown.label, old))).toBe('test-pour-too-old');
      must(await anyway(unknown.label, await pour(unknown.lotId, { madeOn: day('2026-08-27') })));
    });

    it('does not rest on a look: an inspection is no test pour', async () => {
      const { label, lotId } = await past();
      const looked = await pour(lotId, { kind: 'inspection' });
      expect(refusedWith(await anyway(label, looked))).toBe('override-needs-test-pour');
    });

    it('takes a photo in place of a note, and keeps both with the entry', async () => {
      const { label, lotId, containers } = await past();
      const id = await pour(lotId, { note: '', photo });
      expect(must(await anyway(label, id, 'A tray, not a top')).overridden).toBe(true);
      const { entries } = await history(test.book, { stockId: containers[0]?.stockId });
      expect(entries[0]).toMatchObject({
        kind: 'pulled',
        verdict: 'stop',
        why: 'A tray, not a top',
        overridden: { madeOn: TODAY },
      });
    });

    it.each(['on-hold', 'quarantine', 'recalled'] as const)(
      'never overrides %s, of the lot or of the container',
      async (hold) => {
        const { label, lotId, containers } = await past();
        const id = await pour(lotId);
        for (const stockId of [lotId, containers[0]?.stockId ?? 0]) {
          must(await changeHold(test.book, by(), { stockId, hold, why: 'Soft spots' }));
          const refused = await anyway(label, id);
          expect(refusedWith(refused)).toBe('stop-not-overridable');
          if (!refused.ok) expect(sayRefusal(refused.error).todo).toContain('released first, with a reason');
          expect(refusedWith(await changeHold(test.book, by(), { stockId, hold: 'free', why: '' }))).toBe(
            'release-needs-reason',
          );
          must(await changeHold(test.book, by(), { stockId, hold: 'free', why: 'Looked at again' }));
        }
        must(await anyway(label, id));
      },
    );

    it.each(['gelled', 'skinned-through'] as const)('never overrides %s', async (condition) => {
      const { label, lotId } = await past();
      must(await noteCondition(test.book, by(), { label, conditions: [condition], why: '' }));
      expect(refusedWith(await anyway(label, await pour(lotId)))).toBe('stop-not-overridable');
    });
  });

  it('keeps the old dates of a lot in its history when they are corrected', async () => {
    const { label, lotId } = await tin({
      dates: { bestBefore: { date: day('2026-11-30'), precision: 'month', confirmed: false } },
    });
    expect(await codesOf(label)).toContain('date-unconfirmed');
    must(
      await correctLotDates(test.book, by(), {
        lotId,
        dates: { madeOn: printed('2026-02-03'), bestBefore: printed('2026-11-12') },
        why: 'Read again under the lamp',
      }),
    );
    expect(await codesOf(label)).toContain('past-limit');
    const { entries } = await history(test.book, { lotId });
    expect(entries[0]).toMatchObject({
      kind: 'dates-corrected',
      why: 'made on: not known → 2026-02-03; best before: 2026-11-30 (month), not confirmed → 2026-11-12. Read again under the lamp',
    });
  });

  it('marks what stood too cold in a place and in the places inside it, once, and nothing else', async () => {
    const place = async (says: string, parentLabel?: string) =>
      must(await addPlace(test.book, by(), { name: name(says), kind: 'room', parentLabel })).label;
    const outer = await place('Lean-to');
    const shelf = await place('Shelf', outer);
    const box = await place('Box', shelf);
    const elsewhere = await place('Warm room');
    const cold = { storageLeastTenthsC: 50, storageMostTenthsC: 300 };
    const inBox = await tin({ placeLabel: box, product: cold });
    const inOuter = await tin({ placeLabel: outer, product: cold });
    const hardy = await tin({ placeLabel: box, product: { storageLeastTenthsC: -300, storageMostTenthsC: 300 } });
    const unstated = await tin({ placeLabel: box });
    const warm = await tin({ placeLabel: elsewhere, product: cold });
    must(await noteCondition(test.book, by(), { label: inBox.label, conditions: ['haze'], why: '' }));

    const noted = must(await noteTemperature(test.book, by(), { label: outer, leastTenthsC: -20, mostTenthsC: 80 }));
    expect([...noted.marked].sort()).toEqual([inBox.label, inOuter.label].sort());
    expect((await standing(inBox.label))?.conditions).toEqual(['haze', 'stored-out-of-range']);
    expect((await standing(inOuter.label))?.conditions).toEqual(['stored-out-of-range']);
    for (const each of [hardy, unstated, warm]) expect((await standing(each.label))?.conditions).toEqual([]);
    expect(await codesOf(inOuter.label)).toContain('stored-out-of-range');

    const again = must(await noteTemperature(test.book, by(), { label: outer, leastTenthsC: -30, mostTenthsC: 60 }));
    expect(again.marked).toEqual([]);
    const hot = must(await noteTemperature(test.book, by(), { label: elsewhere, leastTenthsC: 100, mostTenthsC: 340 }));
    expect(hot.marked).toEqual([warm.label]);
  });
});
