import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { keepPour } from '@/app/_server/pours/keep-pour';
import { keepSentSheet, keepSheet } from '@/app/_server/pours/keep-sheet';
import { pourLift } from '@/app/_server/pours/pour-lift';
import { readKeptSheet } from '@/app/_server/pours/read-kept-sheet';
import { pourInstead, poursOfJob, readPour } from '@/app/_server/pours/read-pour';
import { systemPage } from '@/app/_server/pours/read-systems';
import { removePour } from '@/app/_server/pours/remove-pour';
import { scanForLift } from '@/app/_server/pours/scan-for-lift';
import { newestSheet } from '@/app/_server/pours/sheet-of';
import { type WeighOut, weighOutForLift } from '@/app/_server/pours/weigh-out';
import { loadContainer } from '@/app/_server/stock/load-container';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { recordInspection } from '@/app/_server/stock/record-inspection';
import { addClosedDays } from '@/app/_server/timeline/add-closed-days';
import { readSteps } from '@/app/_server/timeline/read-steps';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import { FACTS, g, mm } from '@/tests/support/pour-figures';
import { planned, pourAsk, readyToPour } from '@/tests/support/pour-of-a-test';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const ROOM = tenthsCelsius(210);

describe('pours in the book', () => {
  let test: TestBook;
  const data = process.env.FLITCHBOOK_DATA;
  beforeAll(async () => {
    test = await freshBook();
    process.env.FLITCHBOOK_DATA = test.files.folder;
  });
  afterAll(async () => {
    if (data === undefined) delete process.env.FLITCHBOOK_DATA;
    else process.env.FLITCHBOOK_DATA = data;
    await test.remove();
  });

  const left = async (label: string) => (await loadContainer(test.book.read, label))?.left;
  const weigh = (input: Omit<WeighOut, 'seen'> & { seen?: WeighOut['seen'] }, key?: string) =>
    weighOutForLift(test.book, by(key), { seen: 'care', ...input });
  const pour = (pourId: number, nr: number, more = {}) =>
    pourLift(test.book, by(), { pourId, nr, room: ROOM, note: '', reason: '', ...more });
  const undo = (entryId: number) => reverseEntry(test.book, by(), { entryId, why: 'A mistake' });
  const pourOf = async (pourId: number) => {
    const found = await readPour(test.book.read, pourId);
    if (!found) throw new Error('There is no such pour.');
    return found;
  };
  const proved = async () => (await proveBook(test.book.read, undefined, test.files.sheets)).differences;
  /** Everything a lift asks for, weighed out of the two containers. */
  const weighAll = async (pourId: number, nr: number, a: string, b: string) => {
    const lift = (await pourOf(pourId)).lifts.find((each) => each.nr === nr);
    for (const [row, batch] of (lift?.batches ?? []).entries()) {
      must(await weigh({ pourId, nr, batch: row + 1, part: 'A', label: a, mass: batch.a }));
      must(await weigh({ pourId, nr, batch: row + 1, part: 'B', label: b, mass: batch.b }));
    }
  };

  describe('a data sheet', () => {
    it('is marked as typed without its file, and the newest counts while older ones stay', async () => {
      const { systemId } = await readyToPour(test.book);
      expect((await newestSheet(test.book.read, systemId))?.facts).toMatchObject({ from: 'typed', densityA: 1100 });
      const again = by();
      must(await keepSheet(test.book, again, { systemId, facts: { ...FACTS, demouldHours: 96 } }));
      const page = await systemPage(test.book, systemId);
      expect(page?.system.sheet?.facts.demouldHours).toBe(96);
      expect(page?.older.map(({ facts }) => facts.demouldHours)).toEqual([72]);
      const entry = await test.book.read.entry.findUniqueOrThrow({ where: { key: again.key } });
      must(await undo(entry.id));
      expect((await newestSheet(test.book.read, systemId))?.facts.demouldHours).toBe(72);
    });

    it('is refused in place, with both figures, where its ratios contradict each other', async () => {
      const { systemId } = await readyToPour(test.book);
      const refused = await keepSheet(test.book, by(), { systemId, facts: { ...FACTS, byMass: { a: 100, b: 83 } } });
      expect(refused).toMatchObject({ error: { code: 'ratios-contradict', field: 'byMass' } });
      if (!refused.ok)
        expect(sayRefusal(refused.error).what).toContain('100 to 83.0; its volumes and densities make it 100 to 45.5');
      expect((await newestSheet(test.book.read, systemId))?.facts.byMass).toEqual({ a: 100, b: 45 });
    });

    it('keeps its file as it is, whatever it was called, and uses it on for numbers put right', async () => {
      const { systemId } = await readyToPour(test.book);
      const pdf = Buffer.from('%PDF-1.7\n1 0 obj\n<<>>\nendobj\ntrailer\n<<>>\n%%EOF\n');
      const file = new File([pdf], '../../Tarn sheet.pdf', { type: 'text/html' });
      must(await keepSentSheet(test.book, by(), { systemId, facts: FACTS, file }));
      const kept = (await newestSheet(test.book.read, systemId))?.kept;
      expect(kept?.file).toMatch(/^[0-9a-f]{32}\.pdf$/);
      const read = await readKeptSheet(kept?.file ?? '');
      expect(read).toMatchObject({ type: 'application/pdf' });
      expect(read?.bytes.equals(pdf)).toBe(true);
      must(await keepSheet(test.book, by(), { systemId, facts: { ...FACTS, fullCureDays: 10 }, sameFile: true }));
      expect(await newestSheet(test.book.read, systemId)).toMatchObject({ facts: { from: 'sheet' }, kept });
      expect(await proved()).toEqual([]);
      fs.renameSync(path.join(test.files.sheets, kept?.file ?? ''), path.join(test.files.folder, 'away'));
      expect(await proved()).toMatchObject([{ rule: 'sheets-are-there' }]);
      fs.renameSync(path.join(test.files.folder, 'away'), path.join(test.files.sheets, kept?.file ?? ''));
    });

    it('takes nothing but a PDF, a PNG or a JPEG, and leaves no file behind where it is refused', async () => {
      const { systemId } = await readyToPour(test.book);
      const before = fs.readdirSync(test.files.sheets);
      for (const bytes of ['<html>%PDF-', '%PDF-1.7 and nothing more', '<svg xmlns="http://www.w3.org/2000/svg"/>']) {
        const file = new File([bytes], 'sheet.pdf', { type: 'application/pdf' });
        expect(refusedWith(await keepSentSheet(test.book, by(), { systemId, facts: FACTS, file }))).toBe(
          'sheet-not-readable',
        );
      }
      const large = new File([Buffer.alloc(15 * 1024 * 1024 + 1)], 'sheet.pdf');
      expect(refusedWith(await keepSentSheet(test.book, by(), { systemId, facts: FACTS, file: large }))).toBe(
        'sheet-too-large',
      );
      const file = new File(['%PDF-1.4\n%%EOF'], 'sheet.pdf');
      const wrong = { ...FACTS, byMass: { a: 1, b: 1 } };
      expect(refusedWith(await keepSentSheet(test.book, by(), { systemId, facts: wrong, file }))).toBe(
        'ratios-contradict',
      );
      expect(fs.readdirSync(test.files.sheets)).toEqual(before);
      expect(await readKeptSheet('../flitchbook.db')).toBeUndefined();
    });
  });

  describe('a plan', () => {
    it('writes the pour, its lifts, their steps and their needs in one entry, and the day of use follows', async () => {
      const ready = await readyToPour(test.book);
      const { pourId } = await planned(test.book, ready, { figures: { sealArea: 100_000 } });
      const { lifts, demould, cure } = await pourOf(pourId);
      expect(lifts.map(({ nr, depth }) => [nr, depth])).toEqual([
        [0, 0],
        [1, mm(30)],
        [2, mm(30)],
      ]);
      const steps = await readSteps(test.book.read, ready.jobId);
      expect(steps.map(({ kind, name, day: on }) => [kind, name, on])).toEqual([
        ['seal', 'River: seal coat', '2026-11-25'],
        ['lift', 'River: lift 1 of 2', '2026-11-26'],
        ['lift', 'River: lift 2 of 2', '2026-11-27'],
        ['demould', 'River: demould', '2026-11-30'],
        ['cure', 'River: cured through', '2026-12-04'],
      ]);
      expect([demould?.day, cure?.day]).toEqual(['2026-11-30', '2026-12-04']);
      const needs = await test.book.read.need.findMany({ where: { jobId: ready.jobId } });
      expect(needs.map(({ resinPart }) => resinPart)).toEqual(['A', 'B', 'A', 'B', 'A', 'B']);
      // 1.5 L of resin of 1067 g/L, 100 to 45, on a scale of a gram.
      expect(needs.slice(2, 4).map(({ amount }) => Number(amount))).toEqual([g(1104), g(497)]);
      const job = await test.book.read.job.findUniqueOrThrow({ where: { id: ready.jobId } });
      expect(job.dayOfUse).toBe('2026-11-27');
      expect(await proved()).toEqual([]);
    });

    it('keeps off the closed days', async () => {
      const closed = await freshBook();
      const ready = await readyToPour(closed.book);
      must(
        await addClosedDays(closed.book, by(), { from: day('2026-11-26'), to: day('2026-11-29'), name: 'Stock fair' }),
      );
      const { pourId } = await planned(closed.book, ready);
      const pour2 = await readPour(closed.book.read, pourId);
      expect(pour2?.lifts.map((each) => each.day)).toEqual(['2026-11-25', '2026-11-30']);
      expect(pour2?.kept.plan.lifts.map((each) => each.joins)).toEqual(['first', 'sand-first']);
      await closed.remove();
    });

    it('is refused without a sheet, with a name used already, from a day that passed, and beyond the sheet without a reason', async () => {
      const ready = await readyToPour(test.book);
      await planned(test.book, ready);
      expect(refusedWith(await keepPour(test.book, by(), pourAsk(ready)))).toBe('name-taken');
      expect(refusedWith(await keepPour(test.book, by(), pourAsk(ready, { name: ' ' })))).toBe('pour-needs-name');
      const early = pourAsk(ready, { name: 'Early', first: day('2026-11-24') });
      expect(refusedWith(await keepPour(test.book, by(), early))).toBe('day-in-the-past');
      const deep = pourAsk(ready, { name: 'Deep', figures: { lifts: 1 } });
      const refused = await keepPour(test.book, by(), deep);
      expect(refused).toMatchObject({ error: { code: 'beyond-the-sheet', field: 'reason', facts: { lift: 1 } } });
      if (!refused.ok) expect(sayRefusal(refused.error).what).toContain('deeper than the sheet allows');
      must(await keepPour(test.book, by(), { ...deep, reason: 'Tried it with the maker' }));
      const wood = pourAsk(ready, { name: 'Wood', figures: { space: { from: 'fills', fills: [] } } });
      expect(refusedWith(await keepPour(test.book, by(), wood))).toBe('pour-does-not-work');
      const bare = await stocked(test.book, { product: { name: 'Bare A', system: { name: 'Bare', part: 'A' } } });
      const { systemId } = await test.book.read.product.findUniqueOrThrow({ where: { id: bare.productId } });
      const none = pourAsk({ jobId: ready.jobId, systemId: systemId ?? 0 }, { name: 'None' });
      expect(refusedWith(await keepPour(test.book, by(), none))).toBe('no-sheet-yet');
    });

    it('answers a press that was sent twice with the same pour', async () => {
      const ready = await readyToPour(test.book);
      const asker = by();
      const first = must(await keepPour(test.book, asker, pourAsk(ready)));
      const again = await keepPour(test.book, asker, pourAsk(ready));
      expect(again).toMatchObject({ value: { replayed: true, answer: { pourId: first.pourId } } });
      expect(await poursOfJob(test.book.read, ready.jobId)).toHaveLength(1);
    });

    it('replaces what was not begun when it is planned anew, and all of that is undone by reversing it', async () => {
      const ready = await readyToPour(test.book);
      const first = await planned(test.book, ready);
      await weighAll(first.pourId, 1, ready.a, ready.b);
      must(await pour(first.pourId, 1));
      const anew = await planned(test.book, ready, {
        pourId: first.pourId,
        figures: { lifts: 3 },
        first: day('2026-12-01'),
      });
      const after = await pourOf(anew.pourId);
      expect(await pourInstead(test.book.read, first.pourId)).toBe(anew.pourId);
      expect(await readPour(test.book.read, first.pourId)).toBeUndefined();
      expect(after.lifts.map(({ nr, depth, poured }) => [nr, depth, poured !== undefined])).toEqual([
        [1, mm(30), true],
        [2, mm(10), false],
        [3, mm(10), false],
        [4, mm(10), false],
      ]);
      expect(after.lifts[0]?.weighed).toHaveLength(2);
      expect(refusedWith(await undo(first.entryId))).toBe('pour-gone');
      expect(await proved()).toEqual([]);
      must(await undo(anew.entryId));
      const back = await pourOf(first.pourId);
      expect(back.lifts.map(({ nr, depth, poured }) => [nr, depth, poured !== undefined])).toEqual([
        [1, mm(30), true],
        [2, mm(30), false],
      ]);
      expect((await readSteps(test.book.read, ready.jobId)).filter(({ kind }) => kind === 'lift')).toHaveLength(2);
      expect(await proved()).toEqual([]);
    });

    it('is taken off with its steps and needs while nothing was weighed, and stands again by reversing', async () => {
      const ready = await readyToPour(test.book);
      const { pourId } = await planned(test.book, ready);
      expect(refusedWith(await removePour(test.book, by(), { pourId, why: ' ' }))).toBe('reason-needed');
      const asker = by();
      must(await removePour(test.book, asker, { pourId, why: 'No river after all' }));
      expect(await poursOfJob(test.book.read, ready.jobId)).toEqual([]);
      expect(await readSteps(test.book.read, ready.jobId)).toEqual([]);
      const entry = await test.book.read.entry.findUniqueOrThrow({ where: { key: asker.key } });
      must(await undo(entry.id));
      expect(await poursOfJob(test.book.read, ready.jobId)).toHaveLength(1);
      const { a } = ready;
      must(await weigh({ pourId, nr: 1, batch: 1, part: 'A', label: a, mass: g(10) }));
      expect(refusedWith(await removePour(test.book, by(), { pourId, why: 'Now' }))).toBe('pour-begun');
    });
  });

  describe('weighing out', () => {
    it('takes it out of the container at once, so that a half-finished pull stands as far as it went', async () => {
      const ready = await readyToPour(test.book);
      const { pourId } = await planned(test.book, ready);
      const weighed = must(await weigh({ pourId, nr: 1, batch: 1, part: 'A', label: ready.a, mass: g(1104) }));
      expect(weighed).toMatchObject({ label: ready.a, mass: g(1104), left: g(1396), word: 'use' });
      expect(await left(ready.a)).toBe(g(1396));
      expect((await pourOf(pourId)).lifts[0]?.weighed).toMatchObject([
        { batch: 1, part: 'A', label: ready.a, mass: g(1104) },
      ]);
      expect(refusedWith(await pour(pourId, 1))).toBe('lift-not-weighed');
      const { entries } = await history(test.book, { stockId: ready.stockA });
      expect(entries[0]).toMatchObject({ kind: 'weighed-out', canReverse: true, verdict: 'use' });
      expect(entries[0]?.why).toBe('River, lift 1: 1.104 kg of part A');
      must(await undo(weighed.entryId));
      expect(await left(ready.a)).toBe(g(2500));
      expect((await pourOf(pourId)).lifts[0]?.weighed).toEqual([]);
      expect(await proved()).toEqual([]);
    });

    it('is computed again from the weights before and after', async () => {
      const ready = await readyToPour(test.book);
      const { pourId } = await planned(test.book, ready);
      const slot = { pourId, nr: 1, batch: 1, part: 'A' as const, label: ready.a };
      const weighed = { beforeMg: g(2680), afterMg: g(1576) };
      expect(refusedWith(await weigh({ ...slot, mass: g(1000), weighed }))).toBe('weighing-differs');
      must(await weigh({ ...slot, mass: g(1104), weighed }));
      const row = await test.book.read.weighed.findFirstOrThrow({ orderBy: { id: 'desc' } });
      expect([row.beforeMg, row.afterMg, row.massMg].map(Number)).toEqual([g(2680), g(1576), g(1104)]);
    });

    it('has a plain answer of its own for every slip', async () => {
      const ready = await readyToPour(test.book);
      const stranger = await readyToPour(test.book);
      const { pourId } = await planned(test.book, ready);
      const slot = (part: 'A' | 'B', label: string) => ({ pourId, nr: 1, batch: 1, part, label, mass: g(1104) });
      const said = async (result: ReturnType<typeof weigh>) => {
        const refused = await result;
        if (refused.ok) throw new Error('It was not refused.');
        return [refused.error.code, sayRefusal(refused.error).what] as const;
      };
      expect((await said(weigh(slot('A', stranger.a))))[0]).toBe('wrong-system');
      expect((await said(weigh(slot('A', ready.b))))[0]).toBe('wrong-part');
      const glue = await stocked(test.book, { product: { name: 'Glue', kind: 'pva', system: undefined } });
      expect((await said(weigh(slot('A', glue.labels[0] ?? ''))))[0]).toBe('not-a-resin-part');
      expect((await said(weigh({ ...slot('A', ready.a), mass: g(2501) })))[1]).toContain(
        'held 2.5 kg: 2.501 kg cannot',
      );
      expect((await said(weigh({ ...slot('A', ready.a), nr: 2 })))[0]).toBe('lift-below-first');
      must(await weigh(slot('A', ready.a)));
      expect((await said(weigh(slot('A', ready.a))))[0]).toBe('part-weighed-already');
      expect((await said(weigh(slot('B', ready.a))))[0]).toBe('same-container-for-both');
      const twin = await stocked(test.book, {
        product: { name: 'Twin A', system: { name: ready.system, part: 'A' } },
      });
      expect((await said(weigh(slot('B', twin.labels[0] ?? ''))))[0]).toBe('part-scanned-twice');
      must(await weigh({ ...slot('B', ready.b), mass: g(440) }));
      const off = await pour(pourId, 1);
      expect(off).toMatchObject({ error: { code: 'ratio-off', facts: { part: 'B', add: 56_800 } } });
      if (!off.ok) expect(sayRefusal(off.error).todo).toContain('Add 56.8 g of part B');
      must(await weigh({ ...slot('B', ready.b), mass: 56_800, more: true }));
      must(await pour(pourId, 1));
      expect((await said(weigh({ ...slot('A', ready.a), more: true })))[0]).toBe('lift-poured-already');
      expect(refusedWith(await pour(pourId, 1))).toBe('lift-poured-already');
    });

    it('asks both parts for one set where the maker sells them so', async () => {
      const ready = await readyToPour(test.book, { facts: { ...FACTS, setsTogether: true } });
      const { pourId } = await planned(test.book, ready);
      must(await weigh({ pourId, nr: 1, batch: 1, part: 'A', label: ready.a, mass: g(1104) }));
      const b = { pourId, nr: 1, batch: 1, part: 'B' as const, label: ready.b, mass: g(497) };
      expect(refusedWith(await weigh(b))).toBe('set-differs');
    });

    it('is judged for the day of the last lift, and a Stop is overridden by a test pour and a reason', async () => {
      const ready = await readyToPour(test.book);
      const { pourId } = await planned(test.book, ready, { first: day('2027-05-31') });
      const ask = { pourId, nr: 1, batch: 1, part: 'A' as const, scan: { text: ready.a } };
      const judged = await scanForLift(test.book, ask, NOW);
      // The second lift is on 1 June, the last good day; it was opened today and keeps half a year.
      expect(judged).toMatchObject({ value: { kind: 'container', verdict: { judgedFor: '2027-06-01' } } });
      const late = await planned(test.book, ready, { name: 'Late', first: day('2027-06-01') });
      const seen = await scanForLift(test.book, { ...ask, pourId: late.pourId }, NOW);
      expect(seen).toMatchObject({ value: { verdict: { word: 'stop' } } });
      const slot = { pourId: late.pourId, nr: 1, batch: 1, part: 'A' as const, label: ready.a, mass: g(1104) };
      expect(refusedWith(await weigh(slot))).toBe('verdict-changed');
      expect(refusedWith(await weigh({ ...slot, seen: 'stop' }))).toMatch(/^override-needs/);
      const line = await loadContainer(test.book.read, ready.a);
      const test1 = {
        lotId: line?.lotId ?? 0,
        kind: 'test-pour' as const,
        madeOn: TODAY,
        passed: true,
        method: '',
        note: 'Hard',
      };
      must(await recordInspection(test.book, by(), test1));
      const { id } = await test.book.read.inspection.findFirstOrThrow({ orderBy: { id: 'desc' } });
      const override = { reason: 'The maker agrees', inspectionId: id };
      const overridden = must(await weigh({ ...slot, seen: 'stop', override }));
      const entry = await test.book.read.entry.findUniqueOrThrow({ where: { id: overridden.entryId } });
      expect(entry).toMatchObject({ verdict: 'stop', overrideInspectionId: id });
      expect(entry.why).toContain('The maker agrees');
      expect(await proved()).toEqual([]);
    });

    it('is judged against every tin of the other part that is in the batch, not the last of them only', async () => {
      const ready = await readyToPour(test.book);
      const { pourId } = await planned(test.book, ready);
      const { lotId, productId } = await test.book.read.container.findUniqueOrThrow({
        where: { stockId: ready.stockA },
      });
      const other = must(
        await receiveContainers(test.book, by(), {
          productId,
          lotCode: 'A-again',
          dates: { bestBefore: { date: day('2027-06-01'), precision: 'day', confirmed: true } },
          receivedOn: TODAY,
          count: 1,
          size: 2_500_000,
        }),
      );
      const second = other.containers[0]?.label ?? '';
      const b = await test.book.read.container.findFirstOrThrow({ where: { stock: { label: ready.b } } });
      must(
        await recordInspection(test.book, by(), {
          lotId,
          pairLotId: b.lotId,
          kind: 'test-pour',
          madeOn: TODAY,
          passed: false,
          method: 'Cup',
          note: 'Soft',
        }),
      );
      // Each came out well by itself since: only the two of them do not go together.
      for (const each of [lotId, b.lotId]) {
        const well = { kind: 'test-pour' as const, madeOn: TODAY, passed: true, validUntil: day('2027-03-01') };
        must(await recordInspection(test.book, by(), { lotId: each, ...well, method: 'Cup', note: 'Hard' }));
      }
      const slot = { pourId, nr: 1, batch: 1 };
      must(await weigh({ ...slot, part: 'A', label: ready.a, mass: g(600), seen: 'care' }));
      must(await weigh({ ...slot, part: 'A', label: second, mass: g(504), seen: 'care', more: true }));
      // With the second lot alone there is nothing against it; the first is in the same bucket.
      expect(refusedWith(await weigh({ ...slot, part: 'B', label: ready.b, mass: g(497), seen: 'care' }))).toBe(
        'verdict-changed',
      );
      const scanned = await scanForLift(test.book, { ...slot, part: 'B', scan: { text: ready.b } }, NOW);
      expect(scanned).toMatchObject({ value: { kind: 'container', verdict: { word: 'stop' } } });
    });

    it('says what else was scanned, and refuses it as weighing would', async () => {
      const ready = await readyToPour(test.book);
      const { pourId } = await planned(test.book, ready);
      const ask = { pourId, nr: 1, batch: 1, part: 'A' as const };
      expect(refusedWith(await scanForLift(test.book, { ...ask, scan: { text: ready.b } }, NOW))).toBe('wrong-part');
      expect(await scanForLift(test.book, { ...ask, scan: { text: '5901234123457' } }, NOW)).toMatchObject({
        value: { kind: 'nothing' },
      });
      expect(refusedWith(await scanForLift(test.book, { ...ask, nr: 9, scan: { text: ready.a } }, NOW))).toBe(
        'pour-gone',
      );
    });
  });

  describe('a lift', () => {
    it('is poured with the room as it was; its step is done, and reversing undoes both', async () => {
      const ready = await readyToPour(test.book);
      const { pourId } = await planned(test.book, ready);
      await weighAll(pourId, 1, ready.a, ready.b);
      const poured = must(await pour(pourId, 1, { humidityTenths: 480, note: 'Two bubbles', happenedOn: TODAY }));
      const [lift] = (await pourOf(pourId)).lifts;
      expect(lift?.poured).toMatchObject({
        on: TODAY,
        who: 'Ada',
        room: 210,
        humidityTenths: 480,
        note: 'Two bubbles',
      });
      const done = async () => (await readSteps(test.book.read, ready.jobId)).map(({ doneOn }) => doneOn);
      expect((await done()).slice(0, 2)).toEqual([TODAY, null]);
      const weighing = await test.book.read.weighed.findFirstOrThrow({ where: { liftId: lift?.id ?? 0 } });
      expect(refusedWith(await undo(weighing.entryId))).toBe('poured-since');
      must(await undo(poured.entryId));
      expect((await pourOf(pourId)).lifts[0]?.poured).toBeUndefined();
      expect((await done()).slice(0, 2)).toEqual([null, null]);
      must(await undo(weighing.entryId));
      expect(await left(ready.a)).toBe(g(2500));
      expect(await proved()).toEqual([]);
    });

    it('is not taken back from under one that was begun, and needs a reason in too warm or too cold a room', async () => {
      const ready = await readyToPour(test.book, { facts: { ...FACTS, leastRoom: tenthsCelsius(180) } });
      const { pourId } = await planned(test.book, ready);
      await weighAll(pourId, 1, ready.a, ready.b);
      expect(refusedWith(await pour(pourId, 1, { room: tenthsCelsius(260) }))).toBe('beyond-the-sheet');
      const cold = await pour(pourId, 1, { room: tenthsCelsius(120) });
      expect(cold).toMatchObject({ error: { code: 'beyond-the-sheet', facts: { why: 'room-too-cold' } } });
      expect(!cold.ok && sayRefusal(cold.error).what).toMatch(/colder room than the sheet allows, and may stay soft/);
      const first = must(await pour(pourId, 1, { room: tenthsCelsius(260), reason: 'The fan was on' }));
      const early = { early: 'A trial' };
      must(await weigh({ pourId, nr: 2, batch: 1, part: 'A', label: ready.a, mass: g(1104), below: early }));
      expect(refusedWith(await undo(first.entryId))).toBe('lift-on-top');
      expect((await pourOf(pourId)).lifts[0]?.poured?.why).toBe('River, lift 1: The fan was on');
    });
  });
});
