import { describe, expect, it } from 'vitest';
import { judgeCard, openingOn } from '@/app/(shop)/arrive/judge-card';
import { openingOf } from '@/app/(shop)/arrive/opening-of';
import { arrivalSchema, type TypedArrival } from '@/app/(shop)/arrive/schema';
import { cardOf, day, SHOP, TYPING } from './card-of-a-test';

const NO_DATE = { text: '', confirmed: false };
const ARRIVAL: TypedArrival = {
  productId: 7,
  unit: 'mg',
  lot: '',
  dates: { useBy: NO_DATE, bestBefore: NO_DATE, madeOn: NO_DATE },
  count: '1',
  size: '2.5 kg',
  cost: '',
  placeLabel: '',
  receivedOn: '',
  isOpened: true,
  openedOn: '12 Sep 2026',
  sureness: 'known',
  left: '1.2 kg',
  conditions: ['crystals'],
  openedLifeCount: '',
  openedLifeUnit: 'month',
  quarantine: false,
  reference: '',
};
const saidOf = (typed: TypedArrival) => {
  const read = arrivalSchema(TYPING).safeParse(typed);
  return read.success ? [] : read.error.issues.map((issue) => [issue.path.join('.'), issue.message]);
};

describe('what comes in part-used', () => {
  it('never goes in as sealed: without an opening day it is asked for', () => {
    const asked = [['openedOn', expect.stringMatching(/the earliest it can have been/)]];
    expect(saidOf({ ...ARRIVAL, openedOn: '' })).toEqual(asked);
    expect(saidOf({ ...ARRIVAL, openedOn: '', left: '' })).toEqual(asked);
    expect(saidOf({ ...ARRIVAL, openedOn: '', isOpened: false })).toEqual(asked);
  });

  it('is opened where a day was typed, whatever else is said', () => {
    const read = arrivalSchema(TYPING).parse({ ...ARRIVAL, isOpened: false });
    expect(read.opened).toEqual({ on: '2026-09-12', sureness: 'known' });
  });

  it('stays sealed with a condition only: a sealed tin can have been frozen', () => {
    const sealed = { ...ARRIVAL, isOpened: false, openedOn: '', left: '', conditions: ['frozen' as const] };
    expect(arrivalSchema(TYPING).parse(sealed)).toMatchObject({ opened: undefined, conditions: ['frozen'] });
  });

  it.each([
    ['2026-09', '2026-09-01'],
    ['Sep 2026', '2026-09-01'],
    ['2025', '2025-01-01'],
  ])('takes %s as its first day, guessed', (openedOn, on) => {
    expect(arrivalSchema(TYPING).parse({ ...ARRIVAL, openedOn }).opened).toEqual({ on, sureness: 'guessed' });
    expect(openingOn(cardOf('', { isOpened: true, openedOn }), SHOP)).toEqual({ on, sureness: 'guessed' });
  });

  it('keeps a whole day and what was said of it', () => {
    expect(openingOf({ date: day('2026-09-12'), precision: 'day' }, 'known')).toEqual({
      on: '2026-09-12',
      sureness: 'known',
    });
  });

  it('runs its opened life from the first day of the month on the card too', () => {
    const verdict = judgeCard(cardOf('(17)290110', { isOpened: true, openedOn: 'Apr 2026' }), SHOP);
    // Six months opened, as the product of this test states: 1 Apr to 1 Oct.
    expect(verdict.governing?.lastGoodDay).toBe('2026-10-01');
    expect(verdict.word).toBe('stop');
  });
});
