import { describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { airLinesSchema, airSchema, seasonSchema } from '@/app/(shop)/places/climate-schema';
import { readTypedAir } from '@/app/(shop)/places/read-typed-air';
import { sayBasis } from '@/app/(shop)/places/say-room';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';
import { readCurrency } from '@/shared/units/currency';

const TODAY = '2026-11-25' as CalendarDate;
const TYPING = { today: TODAY, order: 'day-first', prefer: 'metric', currency: unwrap(readCurrency('EUR')) } as const;
const LABEL = unwrap(mintOwnLabel('place', 5)).code;
const wrongOf = (schema: z.ZodType, input: unknown) => {
  const read = schema.safeParse(input);
  return read.success ? [] : read.error.issues.map(({ path }) => path.join('.'));
};

describe('the air as typed', () => {
  const label = LABEL;
  it('reads two numbers and a day', () => {
    const read = airSchema(TYPING).safeParse({ label, temperature: '20,5', humidity: '45 %', takenOn: 'yesterday' });
    expect(read.data).toEqual({ label, lines: [{ takenOn: '2026-11-24', tenthsC: 205, humidityTenths: 450 }] });
  });

  it('says beside each field what is wrong, all at once', () => {
    const typed = { label, temperature: 'warm', humidity: '100', takenOn: '' };
    expect(wrongOf(airSchema(TYPING), typed).sort()).toEqual(['humidity', 'takenOn', 'temperature']);
  });

  it('keeps to what the book and the equation hold: −30 to 80 °C', () => {
    const read = (temperature: string) => readTypedAir({ temperature, humidity: '40' }, 'metric');
    expect(read('-30').air).toEqual({ tenthsC: -300, humidityTenths: 400 });
    expect(read('80').air).toEqual({ tenthsC: 800, humidityTenths: 400 });
    expect(read('-30.1').problems.temperature).toMatch(/−30/);
    expect(read('80.1').problems.temperature).toMatch(/80/);
  });

  it('keeps the lines of a paste that read, a mean a day; refuses one where none does', () => {
    const lines = '2026-11-01 08:00,20,40\nnonsense\n2026-11-01 20:00,22,50';
    expect(airLinesSchema(TYPING).safeParse({ label, lines }).data).toEqual({
      label,
      lines: [{ takenOn: '2026-11-01', tenthsC: 210, humidityTenths: 450 }],
    });
    expect(wrongOf(airLinesSchema(TYPING), { label, lines: 'nonsense' })).toEqual(['lines']);
    expect(wrongOf(airLinesSchema(TYPING), { label, lines: '' })).toEqual(['lines']);
  });

  it('reads a season, which needs a name and a month', () => {
    const typed = { label, name: 'Heating', fromMonth: '10', temperature: '20', humidity: '35' };
    expect(seasonSchema(TYPING).safeParse(typed).data).toEqual({
      label,
      name: 'Heating',
      fromMonth: 10,
      tenthsC: 200,
      humidityTenths: 350,
    });
    expect(wrongOf(seasonSchema(TYPING), { ...typed, name: ' ', fromMonth: '' }).sort()).toEqual(['fromMonth', 'name']);
  });
});

describe('what the air rests on', () => {
  const of = { label: LABEL, name: 'Workshop' };
  const days = { today: TODAY, order: 'day-first' } as const;
  const log = { basis: 'log', tenthsC: 200, humidityTenths: 400 } as const;
  it('names the days, or the season, and whose air it is', () => {
    const first = '2026-11-02' as CalendarDate;
    const many = { ...log, days: 12, from: first, to: '2026-11-24' as CalendarDate };
    expect(sayBasis({ air: many, of, inherited: true }, days)).toBe(
      'The mean of 12 noted days, 2 Nov to 24 Nov. It is the air of Workshop, which it stands in.',
    );
    expect(sayBasis({ air: { ...log, days: 1, from: first, to: first }, of, inherited: false }, days)).toBe(
      'As noted on 2 Nov, the only day of the last four weeks.',
    );
    const season = { basis: 'season', name: 'Heating', tenthsC: 200, humidityTenths: 350 } as const;
    expect(sayBasis({ air: season, of, inherited: false }, days)).toMatch(/^By its season Heating/);
  });
});
