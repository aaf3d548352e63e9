import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unwrap } from '@/shared/result/result';
import { equilibriumMoisture } from '@/shared/wood/equilibrium-moisture';
import { WOOD_FORMULAS } from '@/shared/wood/formulas';
import { humidityForMoisture } from '@/shared/wood/humidity-for-moisture';
import { seasonMoisture } from '@/shared/wood/season-moisture';
import { WOOD_SOURCES } from '@/shared/wood/sources';

const C = (degrees: number) => ({ scale: 'C' as const, degrees });
const emc = (degrees: number, humidity: number) => unwrap(equilibriumMoisture(C(degrees), humidity)).value.mc;

describe('equilibrium moisture content', () => {
  it('rises with humidity at every temperature, from nothing in dry air', () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 100, noNaN: true }), fc.integer({ min: 1, max: 98 }), (t, h) => {
        expect(emc(t, 0)).toBe(0);
        expect(emc(t, h + 1)).toBeGreaterThan(emc(t, h));
      }),
    );
  });

  it.each([100, 100.1, -0.1, Number.NaN])('refuses %d %% humidity', (humidity) => {
    expect(equilibriumMoisture(C(20), humidity)).toMatchObject({ ok: false, error: { code: 'humidity-out-of-range' } });
  });

  it.each([-30.1, 100.1, Number.NaN])('refuses %d °C', (degrees) => {
    expect(equilibriumMoisture(C(degrees), 50)).toMatchObject({
      ok: false,
      error: { code: 'temperature-out-of-range' },
    });
  });

  it('says when it is stretched beyond the table', () => {
    expect(unwrap(equilibriumMoisture({ scale: 'F', degrees: 30 }, 50)).value.beyondTable).toBe(false);
    expect(unwrap(equilibriumMoisture({ scale: 'F', degrees: 29 }, 50)).value.beyondTable).toBe(true);
  });

  it('names its formula and inputs', () => {
    const { how } = unwrap(equilibriumMoisture(C(20), 50));
    expect(how).toEqual({ formula: 'emc', inputs: { 'temperature°C': 20, humidityPercent: 50 } });
    for (const { source } of Object.values(WOOD_FORMULAS)) expect(WOOD_SOURCES).toHaveProperty(source);
  });
});

describe('the humidity for a moisture content', () => {
  it('is the inverse of the equation', () => {
    fc.assert(
      fc.property(fc.integer({ min: -10, max: 60 }), fc.double({ min: 0.5, max: 20, noNaN: true }), (t, mc) => {
        const { value } = unwrap(humidityForMoisture(C(t), mc));
        expect(emc(t, value)).toBeCloseTo(mc, 6);
      }),
    );
  });

  it('refuses a moisture content no air gives', () => {
    expect(humidityForMoisture(C(20), 60)).toMatchObject({ ok: false, error: { code: 'moisture-out-of-range' } });
    expect(humidityForMoisture(C(20), -1)).toMatchObject({ ok: false, error: { code: 'moisture-out-of-range' } });
    expect(humidityForMoisture(C(200), 8)).toMatchObject({ ok: false, error: { code: 'temperature-out-of-range' } });
  });
});

describe('the seasons of a room', () => {
  const winter = { name: 'winter', temperature: C(20), humidity: 30 };
  const summer = { name: 'summer', temperature: C(24), humidity: 65 };

  it('names the driest and the dampest', () => {
    const year = unwrap(seasonMoisture([summer, winter]));
    expect([year.driest.season.name, year.dampest.season.name]).toEqual(['winter', 'summer']);
    expect(year.driest.emc.value.mc).toBeCloseTo(6.2, 1);
    expect(year.dampest.emc.value.mc).toBeCloseTo(11.9, 1);
  });

  it('refuses none, and says which one cannot be', () => {
    expect(seasonMoisture([])).toEqual({ ok: false, error: { code: 'no-seasons' } });
    expect(seasonMoisture([winter, { ...summer, humidity: 120 }])).toMatchObject({
      ok: false,
      error: { code: 'season', at: 1, why: { code: 'humidity-out-of-range' } },
    });
  });
});
