import { describe, expect, it } from 'vitest';
import { arrivalSchema, type TypedArrival } from '@/app/(shop)/arrive/schema';
import { jobSchema } from '@/app/(shop)/jobs/schema';
import { pullSchema, testPourSchema } from '@/app/(shop)/pull/schema';
import { unwrap } from '@/shared/result/result';
import { readCurrency } from '@/shared/units/currency';
import { TODAY } from '@/tests/support/test-book';

// Gregorian calendar: 2027 and 2100 are common years, 2028 is a leap year.
const IMPOSSIBLE = [
  '2027-02-29',
  '2100-02-29',
  '2026-02-30',
  '2026-04-31',
  '2026-13-01',
  '2026-00-10',
  '2026-01-00',
  '0000-00-00',
];
const NO_DATE = [
  '',
  'tomorrow',
  '2026-2-3',
  '26-02-03',
  '2026-02-03T10:00:00Z',
  ' 2026-02-03',
  '2026-02-03; DROP TABLE "Entry"',
];

const pull = { label: 'C4K7VMX', purpose: 'client', dayOfUse: '2026-12-05', asked: 1, seen: 'use' };
const pour = { label: pull.label, madeOn: '2026-11-20', passed: true, method: '', note: 'Hard' };
const job = { name: 'Desk', purpose: 'own', client: '', dayOfUse: '2026-12-05', note: '' };

describe('a day that is not on the calendar reaches no command', () => {
  it.each([...IMPOSSIBLE, ...NO_DATE])('from a form that sends a day: %j', (day) => {
    for (const [schema, form, field] of [
      [jobSchema, job, 'dayOfUse'],
      [pullSchema, pull, 'dayOfUse'],
      [testPourSchema, pour, 'madeOn'],
    ] as const) {
      const read = schema.safeParse({ ...form, [field]: day });
      expect(read.success).toBe(false);
      expect(read.error?.issues.map((each) => each.path.join('.'))).toContain(field);
    }
  });

  it('while a day that is goes through', () => {
    for (const day of ['2028-02-29', '2026-12-31', '1900-01-01', '2199-12-31']) {
      expect(jobSchema.safeParse({ ...job, dayOfUse: day }).success, day).toBe(true);
    }
  });

  const date = (text: string) => ({ text, confirmed: true });
  const typed: TypedArrival = {
    productId: 1,
    unit: 'mg',
    lot: '',
    dates: { useBy: date(''), bestBefore: date(''), madeOn: date('') },
    count: '1',
    size: '2.5 kg',
    cost: '',
    placeLabel: '',
    receivedOn: '',
    isOpened: false,
    openedOn: '',
    sureness: 'known',
    left: '',
    conditions: [],
    openedLifeCount: '',
    openedLifeUnit: 'month',
    quarantine: false,
    reference: '',
  };
  const schema = arrivalSchema({
    today: TODAY,
    order: 'day-first',
    prefer: 'metric',
    currency: unwrap(readCurrency('GBP')),
  });

  it.each(['30 Feb 2027', '31/04/2027', '29.2.2027', '2027-13-40', '32 Dec 2026', 'soon'])(
    'from a card on which it was typed: %j',
    (text) => {
      expect(schema.safeParse(typed).success).toBe(true);
      for (const [field, form] of [
        ['bestBefore', { ...typed, dates: { ...typed.dates, bestBefore: date(text) } }],
        ['receivedOn', { ...typed, receivedOn: text }],
        ['openedOn', { ...typed, openedOn: text }],
      ] as const) {
        const read = schema.safeParse(form);
        expect(read.success, field).toBe(false);
        const issue = read.error?.issues.find((each) => each.path.includes(field));
        expect(issue?.message, field).toMatch(/^[A-Z0-9].*\.$/);
      }
    },
  );
});
