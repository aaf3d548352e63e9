import { describe, expect, it } from 'vitest';
import { pieceRow } from '@/app/(shop)/_parts/stock/piece-row';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { PieceFacts } from '@/shared/wood/judge-piece';
import { pieceLineOfATest, readingOfATest } from '../../../support/piece-line-of-a-test';

const TODAY = '2026-11-25' as CalendarDate;
const DESK = { id: 4, name: 'Desk' };
const READINGS = [readingOfATest({ takenOn: TODAY, mcTenths: 84 })];

function because(facts: Partial<PieceFacts>) {
  const line = pieceLineOfATest({
    readings: READINGS,
    facts: { inStock: true, hold: 'free', flags: [], readings: READINGS, form: 'slab', ...facts },
  });
  return pieceRow(line, { today: TODAY, order: 'day-first', prefer: 'metric' }).because;
}

describe('a piece in a list', () => {
  it('that is promised says so, and the first of what is wrong with it besides', () => {
    expect(because({ promisedTo: DESK, flags: ['strapped', 'twisted'] })).toBe(
      'It is promised to Desk. It is strapped: it may spring or part when the bands are cut.',
    );
    expect(because({ promisedTo: DESK })).toBe('It is promised to Desk.');
  });

  it('that is not promised says the first reason alone, and nothing where there is none', () => {
    expect(because({ flags: ['strapped', 'twisted'] })).toBe(
      'It is strapped: it may spring or part when the bands are cut.',
    );
    expect(because({ hold: 'on-hold', flags: ['strapped'] })).toBe('It is on hold.');
    expect(because({})).toBeNull();
  });
});
