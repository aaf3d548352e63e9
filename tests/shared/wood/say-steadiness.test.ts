import { describe, expect, it } from 'vitest';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { isSteady } from '@/shared/wood/is-steady';
import { saySteadiness } from '@/shared/wood/say-steadiness';

const today = '2026-11-25' as CalendarDate;
const said = (...points: [on: string, mcTenths: number][]) =>
  saySteadiness(isSteady(points.map(([on, mcTenths]) => ({ on: on as CalendarDate, mcTenths }))), {
    today,
    order: 'day-first',
  });

describe('whether a piece has come to rest, in words', () => {
  it('says over how many points and when', () => {
    expect(said(['2026-11-01', 91], ['2026-11-08', 89], ['2026-11-15', 90]).says).toBe(
      'Steady: its last three readings lie within 0.2 points (1 Nov to 15 Nov).',
    );
    expect(said(['2026-11-01', 121], ['2026-11-08', 109], ['2026-11-15', 102]).says).toBe(
      'Still moving: its last three readings are 1.9 points apart (1 Nov to 15 Nov).',
    );
  });
  it('says how many readings are wanted where it cannot be told', () => {
    expect(said(['2026-11-15', 90]).todo).toContain('2 times more');
    expect(said(['2026-11-08', 90], ['2026-11-15', 90]).todo).toContain('once more');
  });
});
