import { describe, expect, it } from 'vitest';
import { addLife } from '@/shared/calendar/add-life';
import { type CalendarDate, parseCalendarDate } from '@/shared/calendar/calendar-date';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { unwrap } from '@/shared/result/result';
import { inspectionLife, nextExtension } from '@/shared/shelf-life/inspection-life';
import { judge } from '@/shared/shelf-life/judge';
import { shelfLifeCode } from '@/shared/shelf-life/shelf-life-code';
import { day, input, inspection, printed } from '@/tests/shared/shelf-life/fixtures';

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

describe('41 CFR 101-27.205: one-character shelf-life codes', () => {
  it.each(TABLE)('%i months is type I %s, fixed, and type II %s, inspectable', (period, typeOne, typeTwo) => {
    expect(shelfLifeCode(typeOne)).toEqual({ kind: 'fixed', statedLife: months(period) });
    expect(shelfLifeCode(` ${typeOne.toLowerCase()}`)).toEqual({ kind: 'fixed', statedLife: months(period) });
    if (typeTwo) expect(shelfLifeCode(typeTwo)).toEqual({ kind: 'inspectable', statedLife: months(period) });
  });

  // MIL-STD-129, as restated: letters other than X are type I, digits and X type II. Defense Acquisition University, "Shelf-life":
  // an item that does not deteriorate has code zero.
  it('X is type II beyond 60 months, 0 does not deteriorate, and I, O and the rest are no codes', () => {
    expect(shelfLifeCode('X')).toEqual({ kind: 'inspectable', statedLife: months(60) });
    expect(shelfLifeCode('0')).toEqual({ kind: 'keeps' });
    for (const none of ['I', 'O', 'T', 'Z', '', 'AA', '10', '-']) expect(shelfLifeCode(none)).toBeUndefined();
  });

  // Type I has a definite, non-extendible life; type II may be extended after inspection, test or restorative action: read in
  // a restatement of MIL-STD-129. DoDM 4140.27 vol. 1 (2016), which governs it, was not opened past its front matter.
  it('an inspection extends a type II material and never a type I', () => {
    const judged = (code: string) =>
      judge(
        input({
          policy: { ...shelfLifeCode(code), statedLifeBasis: 'label' },
          lot: { bestBefore: undefined, madeOn: printed('2025-10-01') },
          inspections: [inspection()],
        }),
      );
    expect(judged('H')).toMatchObject({ word: 'stop', governing: { basis: 'stated-life', lastGoodDay: '2026-10-01' } });
    expect(judged('4')).toMatchObject({ word: 'care', governing: { basis: 'inspection', lastGoodDay: '2027-05-01' } });
  });
});

describe('FED-STD-793 §3.3 and §3.4: extensions', () => {
  // The worked example: made 05/05 with 24 months gives 05/07, then 05/08, 01/09 and 05/09.
  it('made May 2005 with 24 months reaches May 2007, then May 2008, January 2009, May 2009, and no further', () => {
    const made = day('2005-05-01');
    expect(addLife(made, months(24))).toBe('2007-05-01');
    expect([0, 1, 2, 3].map((granted) => nextExtension(made, 24, granted))).toEqual([
      '2008-05-01',
      '2009-01-01',
      '2009-05-01',
      undefined,
    ]);
  });

  it('is normally half of the original life, part months rounded up', () => {
    expect([24, 12, 9, 3, 1].map((count) => inspectionLife(months(count)).count)).toEqual([12, 6, 5, 2, 1]);
    expect(inspectionLife({ count: 3, unit: 'year' })).toEqual(months(18));
    expect(inspectionLife({ count: 3, unit: 'week' })).toEqual({ count: 11, unit: 'day' });
  });

  it('never passes the day made plus twice the life', () => {
    for (let life = 1; life <= 60; life++) {
      const made = day('2020-01-01');
      const most = addLife(made, months(2 * life));
      const reached = [0, 1, 2].map((granted) => nextExtension(made, life, granted)).filter((one) => one !== undefined);
      expect(reached.at(-1)).toBe(most);
      expect([...reached].sort()).toEqual(reached);
      expect(new Set(reached).size).toBe(reached.length);
    }
  });

  it('refuses a life or a count that is not whole', () => {
    expect(() => nextExtension(day('2020-01-01'), 0, 0)).toThrow(RangeError);
    expect(() => nextExtension(day('2020-01-01'), 12, -1)).toThrow(RangeError);
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
