import { describe, expect, it } from 'vitest';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import { pieceRow } from '@/app/(shop)/_parts/stock/piece-row';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';
import { nanometres } from '@/shared/units/nanometres';
import type { PieceFacts } from '@/shared/wood/judge-piece';

const TODAY = '2026-11-25' as CalendarDate;
const DESK = { id: 4, name: 'Desk' };
const READINGS = [{ takenOn: TODAY, mcTenths: 84, meter: '', spot: '' }];

function because(facts: Partial<PieceFacts>) {
  const width = nanometres(700_000_000);
  const line: PieceLine = {
    stockId: 7,
    label: unwrap(mintOwnLabel('slab', 41)).code,
    form: 'slab',
    species: 'Walnut',
    lengthNm: nanometres(3_000_000_000),
    widthStartNm: width,
    widthMiddleNm: width,
    widthEndNm: width,
    thicknessNm: nanometres(58_000_000),
    flitch: '',
    flitchNumber: null,
    cost: null,
    receivedOn: TODAY,
    note: '',
    place: null,
    placeLabel: null,
    readings: READINGS,
    facts: { inStock: true, hold: 'free', flags: [], readings: READINGS, form: 'slab', ...facts },
  };
  return pieceRow(line, { today: TODAY, prefer: 'metric' }).because;
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
