import { describe, expect, it } from 'vitest';
import { addLife } from '@/shared/calendar/add-life';
import { addMonths } from '@/shared/calendar/add-months';
import { type CalendarDate, parseCalendarDate } from '@/shared/calendar/calendar-date';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { unwrap } from '@/shared/result/result';
import { inspectionLife } from '@/shared/shelf-life/inspection-life';
import { judge } from '@/shared/shelf-life/judge';
import { limitsOf } from '@/shared/shelf-life/limits-of';
import type { PolicyKind } from '@/shared/shelf-life/types/policy';
import { candidate, day, input, inspection, printed, TODAY } from '@/tests/shared/shelf-life/fixtures';

const months = (count: number) => ({ count, unit: 'month' }) as const;

// 41 CFR 101-27.205(a), the table of shelf-life code designators: period in months, type I code, type II code.
// The rows of 27, 30 and 36 months are from memory; the others were read in copies of the table.
const TABLE: readonly (readonly [number, string, string | undefined])[] = [
  [1, 'A', undefined],
  [2, 'B', undefined],
  [3, 'C', '1'],
  [4, 'D', undefined],
  [5, 'E', undefined],
  [6, 'F', '2'],
  [9, 'G', '3'],
  [12, 'H', '4'],
  [15, 'J', undefined],
  [18, 'K', '5'],
  [21, 'L', undefined],
  [24, 'M', '6'],
  [27, 'N', undefined],
  [30, 'P', undefined],
  [36, 'Q', '7'],
  [48, 'R', '8'],
  [60, 'S', '9'],
];

/** A sealed container whose life ended a month ago, and an inspection since then that passed. */
function inspectedPastItsLife(kind: PolicyKind, period: number) {
  const made = addMonths(addMonths(TODAY, -1), -period);
  return judge(
    input(
      {
        policy: { kind, statedLife: months(period), statedLifeBasis: 'label' },
        lot: { bestBefore: undefined, madeOn: printed(made) },
        inspections: [inspection()],
      },
      { dayOfUse: TODAY },
    ),
  );
}

// Type I has a definite, non-extendible life; type II may be extended after inspection, test or restorative action: read in
// a restatement of MIL-STD-129. DoDM 4140.27 vol. 1 (2016), which governs it, was not opened past its front matter.
describe('41 CFR 101-27.205: type I ends with its period, type II may be extended by inspection', () => {
  it.each(TABLE)('%i months: type I, %s, stays past its life; type II, %s, is good again', (period, _, typeTwo) => {
    expect(inspectedPastItsLife('fixed', period)).toMatchObject({
      word: 'stop',
      governing: { basis: 'stated-life', from: { life: months(period) } },
    });
    if (!typeTwo) return;
    const extended = inspectedPastItsLife('inspectable', period);
    expect(extended.word).not.toBe('stop');
    expect(extended.governing).toMatchObject({ basis: 'inspection', lastGoodDay: '2027-05-01' });
  });

  // Defense Acquisition University, "Shelf-life": an item that does not deteriorate has code zero.
  it('an item that does not deteriorate has no limit, whatever life was typed for it', () => {
    const verdict = inspectedPastItsLife('keeps', 1);
    expect(verdict.limits.some((limit) => limit.basis === 'stated-life')).toBe(false);
    expect(verdict.word).not.toBe('stop');
  });
});

describe('FED-STD-793 §3.3 and §3.4: extensions', () => {
  // The worked example: made 05/05 with 24 months gives 05/07, then 05/08, 01/09 and 05/09.
  const goodTo = (inspections: [on: string, until: string][]) =>
    limitsOf({
      ...candidate({
        policy: { kind: 'inspectable', statedLife: months(24), statedLifeBasis: 'label' },
        lot: { bestBefore: undefined, madeOn: printed('2005-05-01') },
        inspections: inspections.map(([on, until], nr) =>
          inspection({ id: `look-${nr}`, on: day(on), validUntil: day(until) }),
        ),
      }),
      today: day('2009-04-01'),
    }).find((limit) => limit.effective)?.lastGoodDay;

  it('made May 2005 with 24 months reaches May 2007, and by each inspection May 2008, January 2009 and May 2009', () => {
    const first = addLife(day('2007-05-01'), inspectionLife(months(24)));
    expect(first).toBe('2008-05-01');
    const looks: [string, string][] = [
      ['2007-04-20', first],
      ['2008-04-20', '2009-01-01'],
      ['2008-12-20', '2009-05-01'],
    ];
    expect([0, 1, 2, 3].map((count) => goodTo(looks.slice(0, count)))).toEqual([
      '2007-05-01',
      '2008-05-01',
      '2009-01-01',
      '2009-05-01',
    ]);
  });

  it('is normally half of the original life, part months rounded up', () => {
    expect([24, 12, 9, 3, 1].map((count) => inspectionLife(months(count)).count)).toEqual([12, 6, 5, 2, 1]);
    expect(inspectionLife({ count: 3, unit: 'year' })).toEqual(months(18));
    expect(inspectionLife({ count: 3, unit: 'week' })).toEqual({ count: 11, unit: 'day' });
  });
});

describe('USAF TO 1-1-700 §12.8: sealants', () => {
  it('a test that passes adds half of the original life: 12 months give 6', () => {
    expect(inspectionLife(months(12))).toEqual(months(6));
  });

  it('a test that fails is never extended over by the pass before it', () => {
    const verdict = judge(
      input({
        lot: { bestBefore: printed('2026-10-01') },
        inspections: [inspection(), inspection({ id: 'look-2', on: day('2026-11-10'), passed: false })],
      }),
    );
    expect(verdict).toMatchObject({ word: 'stop', governing: { basis: 'best-before' } });
  });
});

describe('US Navy training text on shelf life: month and year only', () => {
  const read = (text: string): CalendarDate =>
    unwrap(readTypedDate(text, { today: unwrap(parseCalendarDate('2026-11-25')), order: 'month-first' })).date;

  it('means the last day of that month', () => {
    expect(read('2027-02')).toBe('2027-02-28');
    expect(read('02/2028')).toBe('2028-02-29');
    expect(read('Apr 2027')).toBe('2027-04-30');
  });

  it('is good on that day and past on the next', () => {
    const on = (text: string) =>
      judge(input({ lot: { bestBefore: printed('2027-02-01', 'month') } }, { dayOfUse: day(text) })).word;
    expect([on('2027-02-28'), on('2027-03-01')]).toEqual(['care', 'stop']);
  });
});
