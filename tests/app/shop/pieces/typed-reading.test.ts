import { describe, expect, it } from 'vitest';
import { figuredPiece, newestReadings } from '@/app/(shop)/pieces/figured-piece';
import { readAcross } from '@/app/(shop)/pieces/read-across';
import { sayWhere } from '@/app/(shop)/pieces/say-reading';
import { readingsAlong, typedPlace } from '@/app/(shop)/pieces/typed-reading';
import { unwrap } from '@/shared/result/result';
import { parseLength } from '@/shared/units/parse-length';
import { takenAs } from '@/shared/wood/moisture-reading';
import { pieceLineOfATest, readingOfATest } from '@/tests/support/piece-line-of-a-test';
import { day, mm } from './piece-of-a-test';

describe('the place of a reading', () => {
  it('is tapped as it would be typed, to the millimetre or the eighth of an inch, and reads back as it was tapped', () => {
    for (const prefer of ['metric', 'imperial'] as const) {
      const near = prefer === 'metric' ? 500_000 : 1_587_500;
      for (const [x, y] of [
        [812_345, 120_400],
        [2_000_000, -77_777],
      ] as const) {
        const typed = typedPlace({ x, y }, prefer);
        const along = unwrap(parseLength(typed.along, { prefer }));
        const across = readAcross(typed.across, prefer);
        if (!across?.ok) throw new Error(typed.across);
        expect(Math.abs(along - x * 1000)).toBeLessThanOrEqual(near);
        expect(Math.abs(across.value - y * 1000)).toBeLessThanOrEqual(near);
      }
    }
    expect(typedPlace({ x: 500_000, y: 0 }, 'metric')).toEqual({ along: '500 mm', across: '' });
  });
  it('lies to the right of the line below zero, by its sign or by its word', () => {
    const nm = (text: string) => {
      const read = readAcross(text, 'metric');
      return read?.ok ? read.value : read;
    };
    expect([nm('120'), nm('120 mm left'), nm('left 120')]).toEqual([mm(120), mm(120), mm(120)]);
    expect([nm('-120'), nm('−120 mm'), nm('120 mm right')]).toEqual([-mm(120), -mm(120), -mm(120)]);
    expect(nm(' ')).toBeUndefined();
    expect(nm('somewhere')).toMatchObject({ ok: false });
  });
  it('is asked for five times at even steps, none nearer to an end than 254 mm or a sixth of a short piece', () => {
    const along = (length: number) =>
      readingsAlong(mm(length), 5, 'metric').map((row) => unwrap(parseLength(row.along, { prefer: 'metric' })) / 1e6);
    expect(along(3000)).toEqual([254, 877, 1500, 2123, 2746]);
    expect(along(600)).toEqual([100, 200, 300, 400, 500]);
  });
});

describe('a reading as the computations take it', () => {
  const kept = readingOfATest({
    takenOn: day('2026-11-20'),
    mcTenths: 96,
    correctedTenths: 106,
    meter: 'Pinless meter',
    meterKind: 'pin',
    spot: '10 mm deep, mid-length',
    depthNm: mm(29),
    alongNm: mm(900),
    acrossNm: mm(-40),
    speciesSetting: 'walnut',
    woodTenthsC: 100,
  });
  const figured = (reading: typeof kept) => figuredPiece(pieceLineOfATest({ readings: [reading] }), 'metric');
  it('rests on what was kept as such, not on what its words may mean', () => {
    expect(figured(kept).readings[0]).toMatchObject({
      meter: 'pin',
      along: mm(900),
      across: mm(-40),
      depth: mm(29),
      rawTenths: 96,
      correctedTenths: 106,
      speciesSetting: 'walnut',
      woodTemperature: 100,
    });
    const newest = newestReadings(figured(kept));
    expect(newest && takenAs(newest.wettest)).toBe(106);
    expect(newest?.coreTenths).toBe(106);
  });
  it('is read from its words where nothing was kept', () => {
    const words = { ...kept, meterKind: '' as const, depthNm: null, alongNm: null };
    expect(figured(words).readings[0]).toMatchObject({ meter: 'pinless', along: mm(1500), depth: mm(10) });
  });
  it('says where and with what it was taken', () => {
    expect(sayWhere({ ...kept, spot: '' }, 'metric')).toBe(
      '900 mm along, 40 mm right, 29 mm deep, Pinless meter, set to walnut',
    );
  });
});
