import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '@/shared/calendar/add-days';
import { parseCalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import { correctForTemperature, USUAL_CALIBRATION } from '@/shared/wood/correct-for-temperature';
import { dryingSeries } from '@/shared/wood/drying-series';
import { isSteady, STEADY_WITHIN_TENTHS } from '@/shared/wood/is-steady';
import { METER_KINDS, type MoistureReading } from '@/shared/wood/moisture-reading';
import { sayReadingCaution } from '@/shared/wood/say-reading-caution';
import { type PieceSize, summariseReadings } from '@/shared/wood/summarise-readings';

const day = unwrap(parseCalendarDate('2026-03-01'));
const mm = (amount: number) => nanometres(amount * 1_000_000);
const pin = (rawTenths: number, more: Partial<MoistureReading> = {}): MoistureReading => ({
  on: day,
  rawTenths,
  meter: 'pin',
  along: mm(900),
  ...more,
});
const size: PieceSize = { length: mm(2000), thickness: mm(30) };
const codes = (readings: readonly MoistureReading[], of: PieceSize = size) =>
  summariseReadings(readings, of)?.cautions.map(({ code }) => code);

describe('the readings of a piece', () => {
  it('its figure is the wettest of the newest day, never the mean', () => {
    const older = pin(200, { on: addDays(day, -30) });
    const summary = summariseReadings([pin(70), older, pin(100), pin(80)], size);
    expect([summary?.on, summary?.wettest.rawTenths, summary?.driest.rawTenths]).toEqual([day, 100, 70]);
    expect(summary?.cautions).toEqual([]);
  });

  it('is nothing without readings', () => expect(summariseReadings([])).toBeNull());

  it('takes the corrected figure where there is one and keeps the raw one', () => {
    const summary = summariseReadings([pin(90), pin(80, { correctedTenths: 110 }), pin(85)], size);
    expect(summary?.wettest).toMatchObject({ rawTenths: 80, correctedTenths: 110 });
  });

  it('a mean near 7 % can hide a core of 10 % and a shell of 6 %', () => {
    const readings = [pin(100, { depth: mm(30) }), pin(60, { depth: mm(5) }), pin(60, { depth: mm(5) })];
    const summary = summariseReadings(readings, { length: mm(2000), thickness: mm(60) });
    expect([summary?.coreTenths, summary?.shellTenths]).toEqual([100, 60]);
    expect(summary?.cautions).toEqual([{ code: 'core-wetter', coreTenths: 100, shellTenths: 60 }]);
  });

  it('core begins a third down and shell ends a sixth down, from the nearer face', () => {
    const at = (depth: number) => summariseReadings([pin(90, { depth: mm(depth) })], { thickness: mm(60) });
    expect([at(10)?.shellTenths, at(11)?.shellTenths]).toEqual([90, null]);
    expect([at(20)?.coreTenths, at(19)?.coreTenths]).toEqual([90, null]);
    expect(at(55)?.shellTenths).toBe(90);
  });

  it('wants three, and more for a longer piece', () => {
    expect(codes([pin(90), pin(90)])).toContain('too-few');
    expect(codes([pin(90), pin(90), pin(90)])).not.toContain('too-few');
    expect(codes([pin(90), pin(90), pin(90)], { length: mm(2001) })).toContain('too-few');
  });

  it('minds readings within 254 mm of an end, either end, and not those at 254 mm', () => {
    const three = (along: number) => [pin(90), pin(90), pin(90, { along: mm(along) })];
    expect(codes(three(253))).toContain('near-the-end');
    expect(codes(three(1747))).toContain('near-the-end');
    expect(codes(three(254))).not.toContain('near-the-end');
    expect(codes(three(1746))).not.toContain('near-the-end');
  });

  it('a short piece is read at its middle third', () => {
    expect(codes([pin(90, { along: mm(150) })], { length: mm(300) })).not.toContain('near-the-end');
    expect(codes([pin(90, { along: mm(99) })], { length: mm(300) })).toContain('near-the-end');
  });

  it('says when a meter cannot say', () => {
    const three = (raw: number, meter: MoistureReading['meter'] = 'pin') => [pin(90), pin(90), pin(raw, { meter })];
    expect(codes(three(251))).toContain('above-the-meter');
    expect(codes(three(250))).not.toContain('above-the-meter');
    expect(codes(three(59))).toContain('below-the-meter');
    expect(codes(three(60))).not.toContain('below-the-meter');
    expect(codes(three(45, 'pinless'))).not.toContain('below-the-meter');
    expect(codes(three(900, 'oven'))).not.toContain('above-the-meter');
  });

  it('wants the core of thick stock read', () => {
    const three = [pin(90), pin(90), pin(90)];
    expect(codes(three, { thickness: mm(39) })).toContain('core-not-read');
    expect(codes(three, { thickness: mm(38) })).not.toContain('core-not-read');
  });

  it('says when places were not noted and meters differ', () => {
    const readings = [pin(90), pin(90, { meter: 'pinless' }), { on: day, rawTenths: 90, meter: 'pin' as const }];
    expect(codes(readings)).toEqual(['place-not-noted', 'meters-differ']);
  });

  it('every caution has its own words', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            on: fc.constant(day),
            rawTenths: fc.integer({ min: 0, max: 2500 }),
            meter: fc.constantFrom(...METER_KINDS),
            depth: fc.integer({ min: 0, max: 60 }).map(mm),
            along: fc.integer({ min: 0, max: 2000 }).map(mm),
          }),
          { minLength: 1, maxLength: 6 },
        ),
        (readings) => {
          const summary = summariseReadings(readings, { length: mm(2000), thickness: mm(60) });
          expect(summary?.wettest.rawTenths).toBe(Math.max(...readings.map(({ rawTenths }) => rawTenths)));
          for (const caution of summary?.cautions ?? []) {
            expect(sayReadingCaution(caution, 'metric').says).toMatch(/[.]$/);
          }
        },
      ),
    );
  });
});

// Wood Handbook FPL-GTR-190 (2010), Chapter 13: about half a point for 10 °F, added when the wood is colder.
describe('temperature correction of a pin meter', () => {
  const corrected = (raw: number, wood: number) => unwrap(correctForTemperature(raw, tenthsCelsius(wood), 'pin')).value;

  it.each([
    [120, 211, 120],
    [120, 100, 130],
    [120, 156, 125],
    [120, 267, 115],
    [120, 322, 110],
    [3, 489, 0],
  ])('raw %d tenths in wood of %d tenths °C is %d', (raw, wood, printed) => {
    expect(corrected(raw, wood)).toEqual({ rawTenths: raw, correctedTenths: printed, addedTenths: printed - raw });
  });

  it('refuses other meters and wood the rule was not made for', () => {
    expect(correctForTemperature(120, tenthsCelsius(100), 'pinless')).toMatchObject({
      error: { code: 'only-for-pin-meters' },
    });
    expect(correctForTemperature(120, tenthsCelsius(-181), 'pin')).toMatchObject({
      error: { code: 'wood-temperature-out-of-range' },
    });
    expect(correctForTemperature(120, USUAL_CALIBRATION, 'pin', tenthsCelsius(311)).ok).toBe(true);
  });
});

describe('steady', () => {
  const points = (...figures: readonly (readonly [number, number])[]) =>
    figures.map(([days, mcTenths]) => ({ on: addDays(day, days), mcTenths }));

  it('three weekly readings within half a point are steady, on those days', () => {
    const found = isSteady(points([0, 91], [7, 89], [14, 90]));
    expect(found).toEqual({ state: 'steady', on: [day, addDays(day, 7), addDays(day, 14)], spreadTenths: 2 });
  });

  it('half a point still agrees and six tenths do not', () => {
    expect(isSteady(points([0, 95], [7, 92], [14, 90])).state).toBe('steady');
    expect(isSteady(points([0, 96], [7, 92], [14, 90])).state).toBe('still-moving');
    expect(isSteady(points([0, 96], [7, 92], [14, 90]), STEADY_WITHIN_TENTHS + 1).state).toBe('steady');
  });

  it('readings of one week count once', () => {
    expect(isSteady(points([0, 90], [1, 90], [2, 90]))).toEqual({ state: 'too-few', wanted: 2, daysApart: 6 });
    expect(isSteady(points([0, 90], [5, 140], [6, 90], [12, 90])).state).toBe('steady');
  });

  it('a gap of more than three weeks starts the count again', () => {
    expect(isSteady(points([0, 90], [21, 90], [42, 90])).state).toBe('steady');
    expect(isSteady(points([0, 90], [22, 90], [29, 90]))).toMatchObject({ state: 'too-few', wanted: 1 });
    expect(isSteady([])).toMatchObject({ state: 'too-few', wanted: 3 });
  });

  it('the series is the wettest of each day, oldest first', () => {
    const later = pin(85, { on: addDays(day, 7) });
    expect(dryingSeries([later, pin(90), pin(95), pin(92)])).toEqual([
      { on: day, mcTenths: 95 },
      { on: addDays(day, 7), mcTenths: 85 },
    ]);
  });
});
