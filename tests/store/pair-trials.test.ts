import ICAL from 'ical.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { calendarFor } from '@/app/_server/feed/calendar-for';
import { changeFeed } from '@/app/_server/feed/change-feed';
import { feedSecret } from '@/app/_server/feed/feed-secret';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { answerPull } from '@/app/_server/pull/answer-pull';
import type { Ask } from '@/app/_server/pull/ask';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { containerPage } from '@/app/_server/stock/container-page';
import { discard } from '@/app/_server/stock/discard';
import { type RecordInspection, recordInspection } from '@/app/_server/stock/record-inspection';
import { pairNotes } from '@/app/_server/watch/pair-notes';
import { sayMixedWith } from '@/app/(shop)/pull/_ui/say-mixed-with';
import { unwrap } from '@/shared/result/result';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

let test: TestBook;
let lots = 0;
beforeAll(async () => {
  test = await freshBook();
  must(await changeFeed(test.book, by(), { to: 'new' }));
});
afterAll(async () => {
  expect((await proveBook(test.book.read)).differences).toEqual([]);
  await test.remove();
});

const on = (date: string) => ({ bestBefore: { date: day(date), precision: 'day' as const, confirmed: true } });

/** A lot of a part of a system, three weeks past its day unless told otherwise. */
async function lotOf(part: 'A' | 'B', system: string, { good = false, count = 1 } = {}) {
  lots += 1;
  const made = await stocked(test.book, {
    product: {
      name: `${system} ${lots} ${part}`,
      kind: part === 'A' ? 'resin-a' : 'resin-b',
      system: { name: system, part },
    },
    lotCode: `P${lots}`,
    dates: on(good ? '2027-06-01' : '2026-11-01'),
    receivedOn: day('2026-10-01'),
    count,
  });
  const [label = '', sister = ''] = made.labels;
  return { ...made, code: `P${lots}`, label, sister };
}
type Lot = Awaited<ReturnType<typeof lotOf>>;

const tried = (one: Lot, other: Lot | undefined, passed: boolean, more: Partial<RecordInspection> = {}) =>
  recordInspection(test.book, by(), {
    lotId: one.lotId,
    pairLotId: other?.lotId,
    kind: 'test-pour',
    madeOn: TODAY,
    passed,
    validUntil: passed ? day('2026-12-05') : undefined,
    method: 'Cup',
    note: 'Seen',
    ...more,
  });

const ask = async (label: string, pairedLabel?: string, change: Partial<Ask> = {}) =>
  unwrap(await answerPull(test.book, { purpose: 'client', dayOfUse: TODAY, label, pairedLabel, ...change }, NOW));
const said = async (label: string, pairedLabel?: string) => {
  const { verdict } = await ask(label, pairedLabel);
  return [verdict.word, ...verdict.reasons.slice(0, 1).map(({ code }) => code)];
};

describe('two lots that passed together', () => {
  it('may be mixed to the day it holds, said of both; neither alone, nor with a third', async () => {
    const [a, b, third] = [await lotOf('A', 'Elm'), await lotOf('B', 'Elm'), await lotOf('B', 'Elm', { good: true })];
    must(await tried(a, b, true));
    expect(await said(a.label, b.label)).toEqual(['care', 'extended-by-inspection']);
    expect(await said(b.label, a.label)).toEqual(['care', 'extended-by-inspection']);
    expect(await said(a.label)).toEqual(['stop', 'past-limit']);
    expect(await said(a.label, third.label)).toEqual(['stop', 'past-limit']);
    const { mixedWith } = await ask(a.label, b.label);
    expect(mixedWith && sayMixedWith(mixedWith, { today: TODAY, order: 'day-first', prefer: 'metric' })).toBe(
      `Mixed with ${printOwnLabel(b.label as OwnLabelCode)}, part B: good to 5 Dec. Printed best before ended 1 Nov; a test pour with the lot of ${printOwnLabel(a.label as OwnLabelCode)} that passed carries it to 5 Dec, for these two together.`,
    );
    const take = { purpose: 'client' as const, dayOfUse: TODAY, label: a.label, asked: 1000, seen: 'care' as const };
    expect(refusedWith(await pullContainer(test.book, by(), { ...take, pairedLabel: third.label }))).toBe(
      'verdict-changed',
    );
    expect(must(await pullContainer(test.book, by(), { ...take, pairedLabel: b.label }))).toMatchObject({
      word: 'care',
    });
  });

  it('let an override rest on it past that day, named together, and the book proves', async () => {
    const [a, b, third] = [await lotOf('A', 'Fir'), await lotOf('B', 'Fir'), await lotOf('B', 'Fir')];
    must(await tried(a, b, true));
    const late = { dayOfUse: day('2026-12-20') };
    const { testPour, verdict } = await ask(a.label, b.label, late);
    expect(verdict).toMatchObject({ word: 'stop', override: { allowed: true } });
    expect(testPour).toMatchObject({ passed: true, together: printOwnLabel(b.label as OwnLabelCode) });
    expect((await ask(a.label, undefined, late)).testPour).toBeNull();
    expect((await ask(a.label, third.label, late)).testPour).toBeNull();
    const override = { reason: 'Agreed with the client', inspectionId: testPour?.id ?? 0 };
    const take = (pairedLabel?: string) =>
      pullContainer(test.book, by(), {
        ...late,
        purpose: 'client',
        label: a.label,
        pairedLabel,
        asked: 1000,
        seen: 'stop',
        override,
      });
    expect(refusedWith(await take())).toBe('override-needs-test-pour');
    expect(refusedWith(await take(third.label))).toBe('override-needs-test-pour');
    expect(must(await take(b.label))).toMatchObject({ overridden: true });
    // Failed together since, there is nothing to rest on.
    must(await tried(a, b, false));
    expect(refusedWith(await take(b.label))).toBe('stop-not-overridable');
  });

  it('of one container speak for that container, and the lists of both lots name it', async () => {
    const [a, b] = [await lotOf('A', 'Gum', { count: 2 }), await lotOf('B', 'Gum')];
    must(await tried(a, b, true, { containerLabel: a.label }));
    expect([await said(a.label, b.label), await said(b.label, a.label)]).toMatchObject([{ 0: 'care' }, { 0: 'care' }]);
    expect([await said(a.sister, b.label), await said(b.label, a.sister)]).toMatchObject([
      { 0: 'stop' },
      { 0: 'stop' },
    ]);
    const [own] = (await containerPage(test.book, a.label))?.inspections ?? [];
    expect(own).toMatchObject({ container: a.label, pairLot: { lotId: b.lotId, container: null } });
    const [other] = (await containerPage(test.book, b.label))?.inspections ?? [];
    expect(other).toMatchObject({ container: null, pairLot: { lotId: a.lotId, container: a.label } });
    expect((await containerPage(test.book, a.sister))?.inspections).toEqual([]);
  });
});

describe('two lots that failed together', () => {
  it('are not mixed though each passed with a third since, until they pass together', async () => {
    const lot = (part: 'A' | 'B') => lotOf(part, 'Hazel', { good: true, count: 2 });
    const [a, b, a2, b2] = [await lot('A'), await lot('B'), await lot('A'), await lot('B')];
    must(await tried(a, b, false));
    expect([await said(a.label), await said(b.label)]).toEqual([
      ['stop', 'inspection-failed'],
      ['stop', 'inspection-failed'],
    ]);
    // One tin that passed clears that tin, and not the other of its lot.
    must(await tried(a, undefined, true, { containerLabel: a.label }));
    expect([await said(a.label), await said(a.sister)]).toMatchObject([['use'], ['stop', 'inspection-failed']]);
    must(await tried(a, b2, true));
    must(await tried(a2, b, true));
    expect([await said(a.sister), await said(b.label), await said(a.label, b2.label)]).toEqual([
      ['use'],
      ['use'],
      ['use'],
    ]);
    expect([await said(a.label, b.label), await said(b.label, a.label)]).toEqual([
      ['stop', 'pair-failed'],
      ['stop', 'pair-failed'],
    ]);
    const take = { purpose: 'client' as const, dayOfUse: TODAY, label: a.label, pairedLabel: b.label, asked: 1000 };
    expect(refusedWith(await pullContainer(test.book, by(), { ...take, seen: 'use' }))).toBe('verdict-changed');
    expect(refusedWith(await pullContainer(test.book, by(), { ...take, seen: 'stop' }))).toBe('stop-not-overridable');
    // A pass of the day before, written now, is before the failure.
    must(await tried(a, b, true, { madeOn: day('2026-11-24') }));
    expect(await said(a.label, b.label)).toEqual(['stop', 'pair-failed']);
    must(await tried(a, b, true));
    expect([await said(a.label, b.label), await said(b.label, a.label)]).toMatchObject([['use'], ['use']]);
  });
});

describe('a pair that rests on its test', () => {
  const notes = async (one: Lot) =>
    (
      await pairNotes(test.book, {
        today: TODAY,
        timeZone: 'UTC',
        dateOrder: 'day-first',
        units: 'metric',
        currency: 'USD',
      })
    ).filter(({ id }) => id.startsWith(`pair-${one.lotId}-`));
  const event = async (one: Lot, other: Lot) => {
    const secret = (await feedSecret(test.book)) ?? '';
    const text = (await calendarFor(test.book, { secret, origin: 'http://x', now: NOW })) ?? '';
    const found = new ICAL.Component(ICAL.parse(text))
      .getAllSubcomponents('vevent')
      .find((each) => String(each.getFirstPropertyValue('uid')).startsWith(`pair-${one.lotId}-${other.lotId}@`));
    return (
      found && {
        uid: String(found.getFirstPropertyValue('uid')),
        day: String(found.getFirstPropertyValue('dtstart')),
        sequence: Number(found.getFirstPropertyValue('sequence')),
      }
    );
  };

  it('is due in Watch and in the calendar under one name, and a newer test moves the day', async () => {
    const [a, b] = [await lotOf('A', 'Ivy'), await lotOf('B', 'Ivy', { good: true })];
    must(await tried(a, b, true));
    expect(await notes(a)).toMatchObject([
      { says: '10 days left', label: `Lot ${a.code} with Lot ${b.code}`, href: `/lots/${a.lotId}`, word: 'care' },
    ]);
    const first = await event(a, b);
    expect(first?.day).toBe('2026-12-05');
    // Written at the other lot, it is the same pair.
    must(await tried(b, a, true, { validUntil: day('2026-12-20') }));
    expect(await notes(a)).toEqual([]);
    const second = await event(a, b);
    expect(second).toMatchObject({ uid: first?.uid, day: '2026-12-20' });
    expect(second?.sequence).toBeGreaterThan(first?.sequence ?? 0);
  });

  it('stays due once it has lapsed, and is nobody’s matter once it failed or one of the two is used up', async () => {
    const [a, b] = [await lotOf('A', 'Jarrah'), await lotOf('B', 'Jarrah')];
    must(await tried(a, b, true, { madeOn: day('2026-11-10'), validUntil: day('2026-11-22') }));
    expect(await notes(a)).toMatchObject([{ says: 'lapsed 3 days ago', word: 'stop' }]);
    must(await discard(test.book, by(), { label: b.label, why: 'Spilt' }));
    expect([await notes(a), await event(a, b)]).toEqual([[], undefined]);
    const [c, d] = [await lotOf('A', 'Jarrah'), await lotOf('B', 'Jarrah')];
    must(await tried(c, d, true));
    expect(await notes(c)).toHaveLength(1);
    must(await tried(c, d, false));
    expect([await notes(c), await event(c, d)]).toEqual([[], undefined]);
  });

  it('needs no test again where both are good longer by themselves', async () => {
    const [a, b] = [await lotOf('A', 'Kapok', { good: true }), await lotOf('B', 'Kapok', { good: true })];
    must(await tried(a, b, true));
    expect([await notes(a), await event(a, b)]).toEqual([[], undefined]);
  });
});
