import { describe, expect, it } from 'vitest';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { airDays, seasonOn, usualAir } from '@/shared/wood/room-air';

const day = (text: string) => text as CalendarDate;
const on = (text: string, tenthsC: number, humidityTenths: number) => ({ on: day(text), tenthsC, humidityTenths });
const WINTER = { name: 'Winter', fromMonth: 10, tenthsC: 180, humidityTenths: 350 };
const SUMMER = { name: 'Summer', fromMonth: 4, tenthsC: 240, humidityTenths: 650 };
const TODAY = day('2026-11-25');

describe('the air of a day', () => {
  it('is the mean of its lines, days in order', () => {
    expect(airDays([on('2026-11-02', 220, 500), on('2026-11-01', 200, 400), on('2026-11-02', 200, 400)])).toEqual([
      on('2026-11-01', 200, 400),
      on('2026-11-02', 210, 450),
    ]);
  });
});

describe('the season of a day', () => {
  it('is the one that began last, over the turn of the year too', () => {
    const year = [WINTER, SUMMER];
    const names = ['2027-01-31', '2027-03-31', '2027-04-01', '2027-09-30', '2027-10-01'].map(
      (text) => seasonOn(year, day(text))?.name,
    );
    expect(names).toEqual(['Winter', 'Winter', 'Summer', 'Summer', 'Winter']);
    expect(seasonOn([], TODAY)).toBeUndefined();
    expect(seasonOn([SUMMER], day('2027-01-01'))?.name).toBe('Summer');
  });
});

describe('the air to reckon with', () => {
  it('counts the last four weeks, today with them, and no day before or after', () => {
    const days = [on('2026-10-28', 900, 900), on('2026-10-29', 200, 400), on('2026-11-25', 220, 500)];
    const later = [...days, on('2026-11-26', 900, 900)];
    expect(usualAir({ days: later, seasons: [WINTER] }, TODAY)).toEqual({
      basis: 'log',
      days: 2,
      from: '2026-10-29',
      to: '2026-11-25',
      tenthsC: 210,
      humidityTenths: 450,
    });
  });

  it('is the season where nothing was noted of late, and nothing where nothing is known', () => {
    const days = [on('2026-10-28', 900, 900)];
    expect(usualAir({ days, seasons: [WINTER, SUMMER] }, TODAY)).toMatchObject({ basis: 'season', name: 'Winter' });
    expect(usualAir({ days, seasons: [] }, TODAY)).toBeUndefined();
  });
});
