import { describe, expect, it } from 'vitest';
import type { HistoryEntry, HistoryMovement } from '@/app/_server/ledger/history';
import { sayEntry } from '@/app/(shop)/_parts/history/say-entry';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

const CONTEXT = {
  timeZone: 'America/New_York',
  today: '2026-11-25' as CalendarDate,
  order: 'day-first' as const,
  prefer: 'metric' as const,
};

const MOVEMENT: HistoryMovement = {
  label: 'C4K7VMX',
  stockKind: 'container',
  unit: 'mg',
  quantityDelta: 0,
  placeFrom: null,
  placeTo: null,
  conditionFrom: '',
  conditionTo: '',
  holdFrom: 'free',
  holdTo: 'free',
  jobFrom: null,
  jobTo: null,
  openedFrom: null,
  openedTo: null,
};

function said(entry: Partial<HistoryEntry>, ...movements: Partial<HistoryMovement>[]) {
  return sayEntry(
    {
      id: 12,
      kind: 'pulled',
      happenedAt: '2026-11-25T15:04:00.000Z',
      writtenAt: '2026-11-25T15:04:00.000Z',
      who: 'Ada',
      device: 'iPhone',
      why: '',
      reference: '',
      verdict: null,
      overridden: null,
      job: null,
      product: null,
      place: null,
      reverses: null,
      undidCut: null,
      reversedBy: null,
      canReverse: movements.length > 0,
      movements: movements.map((line) => ({ ...MOVEMENT, ...line })),
      moreMovements: 0,
      photos: [],
      ...entry,
    },
    CONTEXT,
  );
}

describe('an entry of the book in words', () => {
  it('says when in the time zone of the workshop, not of the server', () => {
    expect(said({}).when.words).toBe('25 Nov, 10:04');
    expect(said({ happenedAt: '2026-01-01T03:00:00.000Z', writtenAt: '2026-01-01T03:00:00.000Z' }).when.words).toBe(
      '31 Dec 2025, 22:00',
    );
  });

  it('says when it was written, where that is later than it happened', () => {
    expect(said({ happenedAt: '2026-11-24T15:04:00.000Z' }).writtenLater).toBe('Written 25 Nov, 10:04');
    expect(said({}).writtenLater).toBeNull();
  });

  it('says how much was taken and for which job, and that it was opened by it', () => {
    const entry = said(
      { job: { id: 3, name: 'River desk' }, verdict: 'care' },
      { quantityDelta: -400_000, openedTo: '2026-11-25/known' },
    );
    expect(entry.what).toBe('Took 400 g for River desk. Opened 25 Nov');
    expect(entry.verdict).toBe('care');
  });

  it('says that an opened day is a guess, and what it replaces', () => {
    expect(said({ kind: 'opened' }, { openedTo: '2026-06-12/guessed' }).what).toBe('Opened 12 Jun (guessed)');
    expect(said({ kind: 'opened' }, { openedFrom: '2026-06-12/guessed', openedTo: '2026-06-01/known' }).what).toBe(
      'Opened 1 Jun, before 12 Jun (guessed)',
    );
  });

  it('says where it went and from where', () => {
    expect(said({ kind: 'moved' }, { placeFrom: 'Bench', placeTo: 'Cabinet 2' }).what).toBe(
      'Moved to Cabinet 2, from Bench',
    );
    expect(said({ kind: 'moved' }, { placeTo: 'Cabinet 2' }, { placeTo: 'Cabinet 2', label: 'C4K7VMY' }).what).toBe(
      'Moved 2 things to Cabinet 2',
    );
  });

  it('counts equal containers of a delivery', () => {
    const line = { quantityDelta: 2_500_000, placeTo: 'Cabinet 2' };
    expect(said({ kind: 'received' }, line, line, line).what).toBe('Received 3 × 2.5 kg, into Cabinet 2');
  });

  it('says how many more there are where it moved more than are listed', () => {
    const line = { quantityDelta: 2_500_000, placeTo: 'Cabinet 2' };
    const received = said({ kind: 'received', moreMovements: 498 }, line, { ...line, label: 'C4K7VMY' });
    expect(received.what).toBe('Received 2 × 2.5 kg and 498 more, into Cabinet 2');
    expect(received.moreLabels).toBe(498);
    expect(said({ kind: 'moved', moreMovements: 3 }, { placeTo: 'Bench' }).what).toBe('Moved 4 things to Bench');
  });

  it('names a piece of wood by its form', () => {
    const slab = { stockKind: 'piece', unit: 'piece' as const, quantityDelta: 1 };
    expect(said({ kind: 'received' }, { ...slab, label: 'S4K7VMX' }, { ...slab, label: 'S4K7VMY' }).what).toBe(
      'Received 2 slabs',
    );
    expect(said({ kind: 'discarded' }, { ...slab, quantityDelta: -1, label: 'S4K7VMX' }).what).toBe(
      'Threw away the slab',
    );
  });

  it('says a hold and a release with the reason', () => {
    expect(said({ kind: 'held', why: 'Waiting for the maker' }, { holdTo: 'on-hold' }).what).toBe(
      'On hold: Waiting for the maker',
    );
    expect(said({ kind: 'released', why: 'Test pour was clear' }, { holdFrom: 'on-hold' }).what).toBe(
      'Released: Test pour was clear',
    );
  });

  it('says what was seen and what is no longer there', () => {
    expect(said({ kind: 'condition-noted' }, { conditionFrom: 'crystals', conditionTo: 'haze' }).what).toBe(
      'Seen: hazy. No longer: crystals',
    );
  });

  it('says whether a weighing found more or less', () => {
    expect(said({ kind: 'weighed' }, { quantityDelta: -30_000 }).what).toBe('Weighed it: 30 g less than the book said');
    expect(said({ kind: 'weighed' }, { quantityDelta: 30_000 }).what).toBe('Weighed it: 30 g more than the book said');
  });

  it('says what an override rests on', () => {
    const entry = said(
      { overridden: { madeOn: '2026-11-20', note: 'Clear and hard' }, verdict: 'stop' },
      { quantityDelta: -1000 },
    );
    expect(entry.overridden).toBe('Used against the advice, on the test pour of 20 Nov: Clear and hard');
  });

  it('says what a reversal put back, and which entry it undid', () => {
    expect(
      said({ kind: 'reversed', reverses: 9 }, { quantityDelta: 400_000, openedFrom: '2026-11-25/known' }).what,
    ).toBe('Reversed entry 9. 400 g back in, sealed again in the book');
    expect(said({ kind: 'reversed', reverses: 9 }, { placeFrom: 'Cabinet 2', placeTo: 'Bench' }).what).toBe(
      'Reversed entry 9. Back to Bench',
    );
  });

  it('says of an undone cut what is whole again', () => {
    const back = { label: 'S1X210Y', quantityDelta: 1, placeTo: 'Slab rack' };
    expect(said({ kind: 'reversed', reverses: 9, undidCut: { kind: 'rip', label: 'S1X210Y' } }, back).what).toBe(
      'Undid the ripping: S-1X210Y is in one piece again, in Slab rack',
    );
    expect(said({ kind: 'reversed', reverses: 9, undidCut: { kind: 'take', label: 'B1X210Y' } }, back).what).toBe(
      'Undid the taking of boards: they are in the pack B-1X210Y again',
    );
  });

  it('marks what was reversed, with the entry that did it', () => {
    expect(said({ reversedBy: 14 }).reversed).toBe('Reversed by entry 14.');
  });

  it('says what was put right of a piece as it was written', () => {
    const why = 'Seen on it: strapped → nothing. Bands cut.';
    expect(said({ kind: 'piece-changed', why })).toMatchObject({ what: 'Put right what the book says of it', why });
  });

  it('says dates and fields of a correction as people do', () => {
    expect(said({ kind: 'dates-corrected', why: 'best before: 2026-12-12 → 2027-12-12' }).why).toBe(
      'best before: 12 Dec → 12 Dec 2027',
    );
    expect(said({ kind: 'product-changed', why: 'careWindowDays: 14 → 30; note: none → x' }).why).toBe(
      'days of care before the limit: 14 → 30; note: none → x',
    );
  });

  it('says an act it does not know by its own name', () => {
    expect(said({ kind: 'stock-counted' }).what).toBe('Stock counted');
  });
});
