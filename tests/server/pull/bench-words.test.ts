import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cautionsOf } from '@/app/(shop)/pull/_ui/cautions-of';
import { headline } from '@/app/(shop)/pull/_ui/headline';
import { echoAmount, readAmount } from '@/app/(shop)/pull/_ui/read-amount';
import { ribbonRange } from '@/app/(shop)/pull/_ui/ribbon-range';
import { sayLeft } from '@/app/(shop)/pull/_ui/say-amount';
import { sayNever } from '@/app/(shop)/pull/_ui/say-hold';
import { addDays } from '@/shared/calendar/add-days';
import { daysBetween } from '@/shared/calendar/days-between';
import { usedByWeight, type Weighing } from '@/shared/units/used-by-weight';
import { day, TODAY } from '@/tests/support/test-book';

const CAN: Weighing = { unit: 'mg', left: 1_840_000, afterMg: 1_608_000, tareMg: 180_000, densityGramsPerLitre: null };

describe('what was used, by weighing', () => {
  it('is what the book says was left, with the can, less what the scale shows now', () => {
    expect(usedByWeight(CAN)).toEqual({ ok: true, value: 412_000 });
  });

  it('is the difference of two weighings, whatever the book or the can say', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 200_000, max: 9_000_000 }),
        fc.integer({ min: 1, max: 5_000_000 }),
        (afterMg, used) => {
          expect(usedByWeight({ ...CAN, afterMg, beforeMg: afterMg + used })).toEqual({ ok: true, value: used });
        },
      ),
    );
  });

  it('is computed by the density for what is kept by volume: 450 g at 900 g/L is half a litre', () => {
    const oil = { ...CAN, unit: 'uL' as const, left: 1_000_000, densityGramsPerLitre: 900 };
    expect(usedByWeight({ ...oil, beforeMg: 1_080_000, afterMg: 630_000 })).toEqual({ ok: true, value: 500_000 });
    expect(usedByWeight({ ...oil, afterMg: 630_000 })).toEqual({ ok: true, value: 500_000 });
  });

  it.each([
    ['counted things', { unit: 'piece' as const }, 'not-by-weight'],
    ['a volume without its density', { unit: 'uL' as const }, 'no-density'],
    ['an unknown can weighed once', { tareMg: null }, 'no-start'],
    ['less than the empty can', { afterMg: 179_999 }, 'lighter-than-empty'],
    ['more than was left', { afterMg: 2_020_001 }, 'heavier-than-before'],
    ['more than before', { beforeMg: 1_607_999 }, 'heavier-than-before'],
    ['the same weight', { beforeMg: 1_608_000 }, 'nothing-used'],
  ])('refuses %s', (_, change, code) => {
    expect(usedByWeight({ ...CAN, ...change })).toEqual({ ok: false, error: { code } });
  });
});

describe('an amount at the bench', () => {
  it('reads a bare number in the small unit of the trade, and says which', () => {
    expect(readAmount('400', 'mg', 'metric')).toEqual({ ok: true, value: 400_000 });
    expect(readAmount('250', 'uL', 'metric')).toEqual({ ok: true, value: 250_000 });
    expect(echoAmount('14', 'mg', 'imperial')).toEqual({ ok: true, says: 'Reads as 14 oz.' });
  });

  it('does not guess at a comma that can mean two amounts', () => {
    expect(echoAmount('2,500 kg', 'mg', 'metric')?.ok).toBe(false);
  });

  it('never says that more is left than there is', () => {
    expect(sayLeft(1_849_999, 'mg', 'metric')).toBe('1.84 kg');
  });
});

describe('the rule of an answer', () => {
  it('holds today, the day of use, and a limit within 120 days of them', () => {
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 400 }), fc.integer({ min: -400, max: 400 }), (use, away) => {
        const dayOfUse = addDays(TODAY, use);
        const limit = addDays(TODAY, away);
        const { from, to } = ribbonRange(TODAY, dayOfUse, limit);
        const [first, last] = use < 0 ? [dayOfUse, TODAY] : [TODAY, dayOfUse];
        expect(from < first && to > last).toBe(true);
        const near = daysBetween(limit, first) <= 120 && daysBetween(last, limit) <= 120;
        expect(limit > from && limit < to).toBe(near);
      }),
    );
  });

  it('stops at the last day of the calendar', () => {
    expect(ribbonRange(TODAY, day('2199-12-30'), undefined).to).toBe('2199-12-31');
  });
});

describe('the headline', () => {
  it('puts each of two sentences on its own line and cuts no number', () => {
    expect(headline('Good to 12 Dec. Needed on 19 Dec.')).toEqual(['Good to 12 Dec.', 'Needed on 19 Dec.']);
    expect(headline('1.84 kg left, 2.5 kg asked.')).toEqual(['1.84 kg left, 2.5 kg asked.']);
    expect(headline('It has gelled.')).toEqual(['It has gelled.']);
  });
});

describe('a stop that nobody overrides', () => {
  it('is a hold, to be released on its page, only when nothing is spoilt as well', () => {
    expect(sayNever(['on-hold', 'recalled']).held).toBe(true);
    expect(sayNever(['on-hold', 'gelled']).held).toBe(false);
    expect(sayNever(['wrong-system']).words).toContain('different systems');
  });
});

describe('cautions', () => {
  it('warn of sensitising hardeners, of what burns, and of cloths that heat up by themselves', () => {
    expect(cautionsOf('resin-b', []).join(' ')).toContain('allergic');
    expect(cautionsOf('other', ['GHS02']).join(' ')).toContain('burns');
    expect(cautionsOf('hardwax-oil', []).join(' ')).toContain('catch fire by themselves');
    expect(cautionsOf('abrasive', [])).toEqual([]);
  });
});
