import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { keepSample } from '@/app/_server/samples/keep-sample';
import { listSamples, sampleChoices } from '@/app/_server/samples/list-samples';
import { lookAtSample } from '@/app/_server/samples/look-at-sample';
import { sampleGone } from '@/app/_server/samples/sample-gone';
import { loadContainer } from '@/app/_server/stock/load-container';
import { lotPage } from '@/app/_server/stock/lot-page';
import { lotsOfOtherPart } from '@/app/_server/stock/lots-of-other-part';
import { noteCondition } from '@/app/_server/stock/note-condition';
import { recordInspection } from '@/app/_server/stock/record-inspection';
import { type RecordTreatment, recordTreatment } from '@/app/_server/treatments/record-treatment';
import { treatmentsOf } from '@/app/_server/treatments/treatments-of';
import { judge } from '@/shared/shelf-life/judge';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

let test: TestBook;
let kinds = 0;
beforeAll(async () => {
  test = await freshBook();
});
afterAll(async () => {
  expect((await proveBook(test.book.read)).differences).toEqual([]);
  await test.remove();
});

async function part(of: 'A' | 'B', system: string, more: Parameters<typeof stocked>[1] = {}) {
  kinds += 1;
  const made = await stocked(test.book, {
    product: {
      name: `Resin ${kinds}, part ${of}`,
      kind: of === 'A' ? 'resin-a' : 'resin-b',
      system: { name: system, part: of },
    },
    lotCode: `L${kinds}`,
    ...more,
  });
  return { ...made, label: made.labels[0] ?? '' };
}

const line = async (label: string) => {
  const found = await loadContainer(test.book.read, label);
  if (!found) throw new Error(`${label} is gone.`);
  return found;
};
const conditions = async (label: string) => (await line(label)).candidate.container.conditions;
const treat = (label: string, kind: RecordTreatment['kind'], more: Partial<RecordTreatment> = {}) =>
  recordTreatment(test.book, by(), { label, kind, doneOn: TODAY, note: '', ...more });
const newest = async (label: string) =>
  (await history(test.book, { stockId: (await line(label)).stockId })).entries[0]?.id ?? 0;
const undo = (entryId: number) => reverseEntry(test.book, by(), { entryId, why: 'Wrong tin' });
const verdict = async (label: string) =>
  judge({ ...(await line(label)).candidate, purpose: 'client', dayOfUse: TODAY, today: TODAY });
const word = async (label: string) => (await verdict(label)).word;

describe('what is done to a container', () => {
  it('clears crystals once it was warmed and stirred since they were seen, and undoing that brings them back', async () => {
    const { label } = await part('A', 'Ash');
    must(await treat(label, 'warmed'));
    must(await treat(label, 'crystals-seen'));
    expect(await conditions(label)).toEqual(['crystals']);
    // Warmed before they were seen is not warmed since.
    expect(must(await treat(label, 'stirred')).cleared).toEqual([]);
    expect(must(await treat(label, 'warmed', { tenthsC: 550, minutes: 60 })).cleared).toEqual(['crystals']);
    expect(await conditions(label)).toEqual([]);
    must(await undo(await newest(label)));
    expect(await conditions(label)).toEqual(['crystals']);
    const kept = await treatmentsOf(test.book, { stockId: (await line(label)).stockId });
    expect(kept.map(({ kind }) => kind)).toEqual(['stirred', 'crystals-seen', 'warmed']);
    // What was undone no longer counts as done.
    expect(must(await treat(label, 'strained')).cleared).toEqual([]);
    expect(must(await treat(label, 'warmed')).cleared).toEqual(['crystals']);
  });

  it('counts from the last time crystals were noted, however they were noted', async () => {
    const { label } = await part('A', 'Birch');
    must(await treat(label, 'stirred'));
    must(await treat(label, 'warmed'));
    must(await noteCondition(test.book, by(), { label, conditions: ['crystals'], why: 'Cold night' }));
    expect(must(await treat(label, 'stirred')).cleared).toEqual([]);
    expect(must(await treat(label, 'warmed')).cleared).toEqual(['crystals']);
  });

  it('counts by the days on which it was seen and done, whatever order that is written in', async () => {
    const came = { receivedOn: day('2026-11-01') };
    const { label } = await part('A', 'Beech', came);
    must(await treat(label, 'crystals-seen', { doneOn: TODAY }));
    for (const kind of ['warmed', 'stirred'] as const) {
      expect(must(await treat(label, kind, { doneOn: day('2026-11-02') })).cleared).toEqual([]);
    }
    expect(await conditions(label)).toEqual(['crystals']);
    // Of one day the order of the entries counts.
    must(await treat(label, 'stirred'));
    expect(must(await treat(label, 'warmed')).cleared).toEqual(['crystals']);

    // Warmed and stirred since they were seen, though the sighting is written last.
    const second = await part('A', 'Beech', came);
    must(await treat(second.label, 'warmed', { doneOn: day('2026-11-05') }));
    must(await treat(second.label, 'stirred', { doneOn: day('2026-11-05') }));
    expect(must(await treat(second.label, 'crystals-seen', { doneOn: day('2026-11-02') })).added).toEqual([]);
    expect(must(await treat(second.label, 'crystals-seen', { doneOn: day('2026-11-06') })).added).toEqual(['crystals']);
    // Seen again later: what was done between the two no longer counts.
    must(await treat(second.label, 'warmed', { doneOn: day('2026-11-08') }));
    must(await treat(second.label, 'crystals-seen', { doneOn: day('2026-11-10') }));
    expect(must(await treat(second.label, 'stirred', { doneOn: day('2026-11-11') })).cleared).toEqual([]);

    // What was noted to have settled today is not stirred in by a stirring of the week before.
    const third = await part('A', 'Beech', came);
    must(await noteCondition(test.book, by(), { label: third.label, conditions: ['settled'], why: '' }));
    expect(must(await treat(third.label, 'stirred', { doneOn: day('2026-11-18') })).cleared).toEqual([]);
    expect(must(await treat(third.label, 'stirred')).cleared).toEqual(['settled']);
  });

  it('takes what came in with it as seen on the day it came, whenever that is written', async () => {
    const { label } = await part('A', 'Boxwood', { receivedOn: day('2026-11-10'), conditions: ['crystals'] });
    must(await treat(label, 'warmed', { doneOn: day('2026-11-12') }));
    expect(must(await treat(label, 'stirred', { doneOn: day('2026-11-12') })).cleared).toEqual(['crystals']);
  });

  it('does not make expired good by straining it', async () => {
    kinds += 1;
    const made = await stocked(test.book, {
      product: { name: `Old ${kinds}`, system: { name: 'Cedar', part: 'A' } },
      lotCode: `L${kinds}`,
      dates: { bestBefore: { date: day('2026-10-01'), precision: 'day', confirmed: true } },
      receivedOn: day('2026-01-10'),
    });
    const label = made.labels[0] ?? '';
    expect(await word(label)).toBe('stop');
    must(await treat(label, 'strained', { note: 'Through a 190 micron cone' }));
    expect(await word(label)).toBe('stop');
  });

  it('is refused for a day it was not here, and for what cannot be', async () => {
    const { label } = await part('A', 'Dogwood');
    expect(refusedWith(await treat(label, 'froze', { doneOn: day('2026-11-26') }))).toBe('received-in-the-future');
    expect(refusedWith(await treat(label, 'froze', { doneOn: day('2026-11-24') }))).toBe('happened-before-it-arrived');
    expect(refusedWith(await treat(label, 'warmed', { tenthsC: 9000 }))).toBe('outside-range');
    expect(refusedWith(await treat(label, 'warmed', { minutes: 0 }))).toBe('outside-range');
    expect(refusedWith(await treat('C000000', 'warmed'))).toBe('not-found');
  });
});

describe('two lots tried together', () => {
  const inspect = (lotId: number, pairLotId: number | undefined, passed: boolean) =>
    recordInspection(test.book, by(), {
      lotId,
      pairLotId,
      kind: 'test-pour',
      madeOn: TODAY,
      passed,
      validUntil: passed ? day('2027-08-01') : undefined,
      method: '2 in cup',
      note: 'Clear',
      massMg: 100_000,
      roomTenthsC: 222,
      minutes: 45,
      result: 'Hard over night',
    });

  it('stand with both, each naming the other', async () => {
    const [a, b] = [await part('A', 'Elm'), await part('B', 'Elm')];
    must(await inspect(a.lotId, b.lotId, true));
    for (const [own, other] of [
      [a, b],
      [b, a],
    ] as const) {
      const page = await lotPage(test.book, own.lotId);
      expect(page?.inspections).toMatchObject([
        { passed: true, massMg: 100_000, roomTenthsC: 222, minutes: 45, pairLot: { lotId: other.lotId } },
      ]);
      const { entries } = await history(test.book, { stockId: own.lotId });
      expect(entries[0]?.why).toContain('100 g, 22.2 °C, 45 min, Hard over night');
    }
    expect(await lotsOfOtherPart(test.book, a.productId)).toMatchObject([{ lotId: b.lotId }]);
  });

  it('found good say nothing of one of them alone; found bad they speak against both', async () => {
    const [a, b] = [await part('A', 'Fir'), await part('B', 'Fir')];
    must(await inspect(a.lotId, b.lotId, true));
    expect(await verdict(a.label)).toMatchObject({ word: 'use', limits: [{ basis: 'best-before' }] });
    must(await inspect(a.lotId, b.lotId, false));
    expect([await word(a.label), await word(b.label)]).toEqual(['stop', 'stop']);
    // Tried with another and found good, it was not this one.
    const other = await part('B', 'Fir');
    must(await inspect(a.lotId, other.lotId, true));
    expect([await word(a.label), await word(b.label)]).toEqual(['use', 'stop']);
  });

  it('are of one system, one of each part', async () => {
    const [a, b] = [await part('A', 'Gum'), await part('B', 'Hazel')];
    expect(refusedWith(await inspect(a.lotId, b.lotId, true))).toBe('pair-of-other-system');
    expect(refusedWith(await inspect(a.lotId, a.lotId, true))).toBe('pair-of-other-system');
    expect(refusedWith(await inspect(a.lotId, 999_999, true))).toBe('not-found');
  });
});

describe('a kept sample', () => {
  const keep = (lotAId: number, lotBId: number, more = {}) =>
    keepSample(test.book, by(), {
      name: 'Oak shelf',
      lotAId,
      lotBId,
      madeOn: day('2026-10-20'),
      lookOn: day('2026-11-19'),
      note: '',
      ...more,
    });

  it('is on the shelf until it is gone, looked at on its days, and every step can be undone', async () => {
    const [a, b] = [await part('A', 'Ivy'), await part('B', 'Ivy')];
    const { sampleId } = must(await keep(a.lotId, b.lotId));
    const sample = async () => (await listSamples(test.book, { all: true })).find(({ id }) => id === sampleId);
    expect(await sample()).toMatchObject({ lookOn: '2026-11-19', gone: false, looks: [] });
    expect((await sample())?.lots.map(({ lotId }) => lotId)).toEqual([a.lotId, b.lotId]);

    const look = {
      sampleId,
      lookedOn: TODAY,
      result: 'soft' as const,
      note: 'Nail leaves a mark',
      nextOn: day('2027-01-20'),
    };
    must(await lookAtSample(test.book, by(), look));
    expect(await sample()).toMatchObject({ lookOn: '2027-01-20', looks: [{ result: 'soft', lookedOn: TODAY }] });
    const { entries } = await history(test.book, { stockId: b.lotId });
    expect(entries[0]).toMatchObject({ kind: 'sample-looked', canReverse: true });
    must(await undo(entries[0]?.id ?? 0));
    expect(await sample()).toMatchObject({ lookOn: '2026-11-19', looks: [] });

    expect(refusedWith(await sampleGone(test.book, by(), { sampleId, why: ' ' }))).toBe('reason-needed');
    must(await sampleGone(test.book, by(), { sampleId, why: 'Fell in the dust bin' }));
    expect((await listSamples(test.book, { all: false })).map(({ id }) => id)).not.toContain(sampleId);
    expect(refusedWith(await lookAtSample(test.book, by(), look))).toBe('sample-gone');
    must(await undo((await history(test.book, { stockId: a.lotId })).entries[0]?.id ?? 0));
    expect(await sample()).toMatchObject({ gone: false });
  });

  it('is of something, and its days are in order', async () => {
    const a = await part('A', 'Juniper');
    const nothing = { lotAId: undefined, lotBId: undefined };
    expect(refusedWith(await keep(a.lotId, a.lotId, nothing))).toBe('sample-of-nothing');
    expect(refusedWith(await keep(a.lotId, a.lotId, { lookOn: day('2026-10-20') }))).toBe('look-before-made');
    expect(refusedWith(await keep(a.lotId, a.lotId, { madeOn: day('2026-12-01') }))).toBe('received-in-the-future');
    expect((await sampleChoices(test.book)).lots.A.length).toBeGreaterThan(0);
  });
});
