import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { suggestInspection } from '@/app/(shop)/_parts/acts/suggest-inspection';
import { typedProduct } from '@/app/(shop)/_parts/product/typed-product';
import { readId } from '@/app/(shop)/_parts/read-id';
import { sayStanding } from '@/app/(shop)/_parts/stock/say-standing';
import { thingHref } from '@/app/(shop)/_parts/thing-href';
import { productSchema } from '@/app/(shop)/arrive/teach-schema';
import { leftByWeight } from '@/app/(shop)/containers/left-by-weight';
import { weighSchema } from '@/app/(shop)/containers/schema';
import { hrefOfAsk, readAsk } from '@/app/(shop)/on-hand/ask';
import { readMoisture } from '@/app/(shop)/pieces/read-moisture';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';
import { judge } from '@/shared/shelf-life/judge';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Policy } from '@/shared/shelf-life/types/policy';
import { readCurrency } from '@/shared/units/currency';
import { milligrams } from '@/shared/units/stock-unit';
import { RESIN } from '@/tests/support/stock-of-a-test';

const TODAY = '2026-11-25' as CalendarDate;
const day = (text: string) => text as CalendarDate;
const TYPING = {
  today: TODAY,
  order: 'day-first' as const,
  prefer: 'metric' as const,
  currency: unwrap(readCurrency('USD')),
};

describe('the address of On hand', () => {
  it('keeps the search, the shelf and the switch, and reads them back', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 100 }),
        fc.constantFrom('materials' as const, 'wood' as const),
        fc.boolean(),
        (text, show, withEmpty) => {
          const ask = { query: text.trim(), show, withEmpty };
          const url = new URL(hrefOfAsk(ask), 'http://shop');
          const params = url.searchParams;
          // An address holds whole characters only: half a pair is replaced on the way.
          if (text.isWellFormed())
            expect(readAsk({ q: params.get('q'), show: params.get('show'), used: params.get('used') })).toEqual(ask);
        },
      ),
    );
  });

  it('takes what does not read for nothing', () => {
    expect(readAsk({ show: 'everything', used: '1', q: ['a', 'b'] })).toEqual({
      query: 'a',
      show: 'materials',
      withEmpty: false,
    });
    expect(readAsk({ q: 'x'.repeat(500) }).query).toHaveLength(100);
  });
});

describe('what is left by weight', () => {
  const weigh = (gross: number, tare: number, unit: 'mg' | 'uL' | 'piece', density: number | null) =>
    leftByWeight({ gross: milligrams(gross), tare: milligrams(tare) }, unit, density);

  it('is the weight less the empty container', () => {
    expect(weigh(1_020_000, 180_000, 'mg', null)).toEqual({ ok: true, value: { left: 840_000, computed: false } });
    expect(weigh(180_000, 180_000, 'mg', null)).toEqual({ ok: true, value: { left: 0, computed: false } });
  });

  it('goes through the density for a volume, and says it is computed (V = m / ρ, NIST SP 811, Appendix B: 1 L is 1 dm³)', () => {
    expect(weigh(1_280_000, 180_000, 'uL', 1100)).toEqual({ ok: true, value: { left: 1_000_000, computed: true } });
  });

  it('is refused where it cannot be known', () => {
    expect(weigh(100_000, 180_000, 'mg', null)).toMatchObject({ error: { code: 'lighter-than-empty' } });
    expect(weigh(1_000_000, 180_000, 'uL', null)).toMatchObject({ error: { code: 'no-density' } });
    expect(weigh(1_000_000, 180_000, 'piece', 1100)).toMatchObject({ error: { code: 'counted-in-pieces' } });
  });

  it('is read from the typed text where it is written, with how it was found', () => {
    const read = (typed: object, unit: 'mg' | 'uL' = 'mg') =>
      weighSchema(TYPING, { unit, densityGramsPerLitre: 1100 }).safeParse({
        label: 'C4K7VMX',
        way: 'gross',
        left: '',
        gross: '',
        tare: '',
        why: '',
        ...typed,
      });
    expect(read({ gross: '1.02 kg', tare: '180 g' }).data).toEqual({
      label: 'C4K7VMX',
      left: 840_000,
      why: '1.02 kg with the container, 180 g empty',
    });
    expect(read({ gross: '1.28 kg', tare: '180 g' }, 'uL').data).toMatchObject({
      left: 1_000_000,
      why: expect.stringContaining('computed from 1100 g/L'),
    });
    expect(read({ way: 'left', left: '0 g' }).data).toMatchObject({ left: 0 });
    expect(read({ gross: '1.02', tare: '180 g' }).error?.issues[0]?.path).toEqual(['gross']);
    expect(read({ gross: '100 g', tare: '180 g' }).error?.issues[0]?.path).toEqual(['gross']);
    expect(read({ label: 'P4K7VMX', gross: '1 kg', tare: '1 g' }).success).toBe(false);
  });
});

describe('a moisture reading', () => {
  it('reads as the meter shows it', () => {
    expect(['8.4', '8,4 %', '12', '100.0%', '250'].map(readMoisture)).toEqual([84, 84, 120, 1000, 2500]);
  });
  it('is refused where it is none', () => {
    expect(['', '8.45', '-3', '251', 'dry', '8 4', '1e1'].map(readMoisture)).toEqual(Array(7).fill(undefined));
  });
});

describe('how a container stands, in a list', () => {
  const policy: Policy = {
    kind: 'inspectable',
    statedLife: { count: 12, unit: 'month' },
    statedLifeBasis: 'data-sheet',
    openedLifeBasis: 'data-sheet',
    careWindowDays: 14,
    freezingRuins: false,
    colourShows: false,
  };
  const standing = (more: { bestBefore?: string; hold?: 'on-hold'; policy?: Policy }) => {
    const candidate: Candidate = {
      policy: more.policy ?? policy,
      lot: {
        id: '1',
        code: 'K',
        hold: 'free',
        bestBefore: more.bestBefore ? { date: day(more.bestBefore), precision: 'day', confirmed: true } : undefined,
      },
      container: { id: '2', label: 'C4K7VMX', left: 1, conditions: [], hold: more.hold ?? 'free' },
      inspections: [],
    };
    return sayStanding(judge({ ...candidate, purpose: 'client', dayOfUse: TODAY, today: TODAY }), TODAY);
  };

  it('says the governing limit, past or to come, once', () => {
    expect(standing({ bestBefore: '2026-12-12' })).toEqual({ limit: 'Good to 12 Dec', because: undefined });
    expect(standing({ bestBefore: '2026-11-25' }).limit).toBe('Good to 25 Nov');
    expect(standing({ bestBefore: '2026-11-24' })).toEqual({ limit: 'Was good to 24 Nov', because: undefined });
  });
  it('adds the worst reason where that is not the date', () => {
    expect(standing({ bestBefore: '2027-12-12', hold: 'on-hold' })).toEqual({
      limit: 'Good to 12 Dec 2027',
      because: 'This container is on hold.',
    });
  });
  it('tells no date from no limit', () => {
    expect(standing({}).limit).toBe('No date known');
    expect(standing({ policy: { ...policy, kind: 'keeps', statedLife: undefined } }).limit).toBe('Keeps');
  });
  it('suggests half of the sealed life for a passed inspection (FED-STD-793 §3.3)', () => {
    expect(suggestInspection(policy, TODAY)?.until).toBe('2027-05-25');
    expect(suggestInspection({ ...policy, kind: 'fixed' }, TODAY)).toBeUndefined();
  });
});

describe('a product in its form', () => {
  it('is the same product when it is read back unchanged, in either system of units', () => {
    for (const prefer of ['metric', 'imperial'] as const) {
      const fields = {
        ...RESIN,
        storageLeastTenthsC: 153,
        storageMostTenthsC: 271,
        packageSize: 946_353,
        unit: 'uL' as const,
      };
      const { densityGramsPerLitre: _, ...kept } = fields;
      expect(productSchema({ ...TYPING, prefer }).parse(typedProduct(fields, prefer))).toEqual({
        ...kept,
        code: undefined,
      });
    }
  });
});

describe('an address of the book', () => {
  it('takes a number only', () => {
    expect(['12', '0', '-1', '1e3', '12a', '', '99999999999'].map(readId)).toEqual([12, ...Array(6).fill(undefined)]);
  });
  it('goes to the page of what the label is stuck on', () => {
    expect(['C1', 'P1', 'S1', 'B1', 'H1', 'F1'].map(thingHref)).toEqual([
      '/containers/C1',
      '/places/P1',
      '/pieces/S1',
      '/pieces/B1',
      '/pieces/H1',
      '/pieces/F1',
    ]);
  });
});
