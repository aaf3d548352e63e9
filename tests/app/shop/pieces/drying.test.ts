import { describe, expect, it } from 'vitest';
import { sayDrying, sayForecast, sayGain } from '@/app/(shop)/pieces/say-drying';
import { workOutDrying } from '@/app/(shop)/pieces/work-out-drying';
import { day, reading, slab } from './piece-of-a-test';

const today = day('2026-11-25');
const READ = [reading('2026-09-30', 180), reading('2026-10-28', 150), reading('2026-11-20', 130)];
const asked = { targetTenths: 80, emc: 6.5, speciesId: 'black-walnut', today };

describe('the drying of a piece', () => {
  it('is not forecast from nothing, whatever the room', () => {
    for (const emc of [undefined, 6.5]) {
      const drying = workOutDrying(slab(), { ...asked, emc });
      expect(drying.forecast).toEqual({ ok: false, error: { code: 'no-readings', wanted: 1 } });
      expect([drying.summary, drying.steadiness, drying.curve]).toEqual([null, null, []]);
    }
  });
  it('is not forecast while the room is not given, though its readings are drawn', () => {
    const drying = workOutDrying(slab({ readings: READ }), { ...asked, emc: undefined });
    expect(drying.forecast).toBeUndefined();
    expect(drying.series).toHaveLength(3);
    expect(drying.from < day('2026-09-30') && drying.to > today).toBe(true);
  });
  it('comes down towards the room’s EMC, from the last reading to past the latest date', () => {
    const { forecast, curve, to } = workOutDrying(slab({ readings: READ }), asked);
    if (!forecast?.ok) throw new Error('no forecast');
    const { dates } = forecast.value.value;
    expect(curve[0]?.on).toBe('2026-11-20');
    expect((curve.at(-1)?.on ?? '') >= to).toBe(true);
    if (dates.latest) expect(to > dates.latest).toBe(true);
    const middles = curve.map(({ middle }) => middle);
    expect(middles).toEqual([...middles].sort((a, b) => b - a));
    expect(middles.at(-1)).toBeGreaterThan(5.5);
  });
  it('says what one more reading would do, on a day still to come', () => {
    const { gain } = workOutDrying(slab({ readings: [reading('2026-10-01', 180)] }), asked);
    expect(gain?.on).toBe(today);
    const soon = workOutDrying(slab({ readings: READ }), asked).gain;
    expect(soon?.on).toBe('2026-12-04');
  });
  it('draws the days to today where the forecast ends before', () => {
    const drying = workOutDrying(slab({ readings: [reading('2025-06-01', 84)] }), { ...asked, targetTenths: 90 });
    expect(drying.forecast?.ok && drying.forecast.value.value.reached).toBe(true);
    expect(drying.to > today).toBe(true);
  });
});

describe('a forecast in words', () => {
  const forecast = {
    reached: false,
    dates: { earliest: day('2026-12-20'), likely: day('2027-01-15'), latest: day('2027-03-02') },
    days: { earliest: 30, likely: 56, latest: 102 },
    neverShare: 0,
    ratePerDay: 0.01,
    cases: [],
  };
  it('gives the date, the four times in five, and what it rests on', () => {
    const { headline, sentences } = sayForecast(forecast, 8, { today, order: 'day-first' });
    expect(headline).toBe('8 % about 15 Jan 2027.');
    expect(sentences[0]).toBe('Four times in five between 20 Dec and 2 Mar 2027.');
    expect(sentences.at(-1)).toContain('The meter in the wood decides');
  });
  it('says so where there is no latest date, and how likely never is', () => {
    const open = { ...forecast, dates: { ...forecast.dates, latest: null }, neverShare: 0.16 };
    const { sentences } = sayForecast(open, 8, { today, order: 'day-first' });
    expect(sentences.slice(0, 2)).toEqual([
      'Four times in five not before 20 Dec; the late end is more than ten years off, or never.',
      '16 in 100 that this air is too damp for it ever to get there.',
    ]);
  });
  it('does not promise a day that has passed', () => {
    const past = { ...forecast, dates: { ...forecast.dates, earliest: day('2026-10-01'), likely: day('2026-11-01') } };
    const { headline, sentences } = sayForecast(past, 8, { today, order: 'day-first' });
    expect(headline).toContain('it came to 8 % about 1 Nov');
    expect(sentences.at(-1)).toContain('read it');
  });
  it('says what one more reading is worth, and nothing where it is worth nothing', () => {
    const on = day('2026-12-04');
    expect(sayGain({ on, widthNow: 92, widthThen: 61 }, { today, order: 'day-first' })).toBe(
      'One more reading on 4 Dec that shows what is expected would narrow the 92 days between those dates to 61.',
    );
    expect(sayGain({ on: today, widthNow: null, widthThen: 80 }, { today, order: 'day-first' })).toContain('today');
    expect(sayGain({ on, widthNow: 60, widthThen: 60 }, { today, order: 'day-first' })).toBeUndefined();
  });
  it('tells the drawing to those who do not see it', () => {
    const drying = workOutDrying(slab({ readings: READ }), asked);
    const told = sayDrying(drying, { target: 8, emc: 6.5, today, order: 'day-first' });
    expect(told).toContain('18 % on 30 Sep, 15 % on 28 Oct, 13 % on 20 Nov');
    expect(told).toContain('The room settles wood at 6.5 %.');
    expect(told).toContain('The target is 8 %.');
  });
});
