import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readMoisture, sayMoistureError } from '@/shared/wood/read-moisture';

describe('a moisture reading as the meter shows it', () => {
  it('is whole tenths of a per cent, with point or comma', () => {
    for (const text of ['11.4', '11,4', ' 11.4 % ', '11.40%'])
      expect(readMoisture(text)).toEqual({ ok: true, value: 114 });
    expect(readMoisture('9')).toEqual({ ok: true, value: 90 });
    expect(readMoisture('0')).toEqual({ ok: true, value: 0 });
  });

  it('goes to 250 % and not beyond', () => {
    expect(readMoisture('250').ok).toBe(true);
    expect(readMoisture('250.1')).toEqual({ ok: false, error: { code: 'absurd' } });
  });

  it('refuses what no meter shows, and says so', () => {
    expect(readMoisture('')).toEqual({ ok: false, error: { code: 'empty' } });
    expect(readMoisture('-3')).toEqual({ ok: false, error: { code: 'not-a-number' } });
    expect(readMoisture('11.44')).toEqual({ ok: false, error: { code: 'finer-than-the-meter' } });
  });

  it('never throws, and every refusal has its sentence', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = readMoisture(text);
        if (!read.ok) expect(sayMoistureError(read.error)).toMatch(/\.$/);
      }),
    );
  });
});
