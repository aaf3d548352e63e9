import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { parseLength } from '@/shared/units/parse-length';
import { printLength } from '@/shared/units/print-length';
import { printLengthExact } from '@/shared/units/print-length-exact';
import { printQuarters } from '@/shared/units/quarters';
import type { UnitSystem } from '@/shared/units/unit-system';

const SIXTY_FOURTH = 396_875;
const inches = (count: number) => nanometres(count * 25_400_000);
const US = { prefer: 'imperial' } as const;

describe('feet and inches', () => {
  it.each([
    [0, '0"'],
    [0.5, '1/2"'],
    [1.75, '1 3/4"'],
    [11.9375, '11 15/16"'],
    [12, "1'"],
    [12.5, '1\' 1/2"'],
    [66.5, '5\' 6 1/2"'],
    [-1.5, '−1 1/2"'],
  ])('%d inches is %s', (count, text) => {
    expect(printLength(inches(count), US)).toBe(text);
  });

  it('can stay in inches', () => {
    expect(printLength(inches(66.5), { ...US, style: 'inches' })).toBe('66 1/2 in');
  });

  it('says ≈ when the fraction is not the length, and carries into the next foot', () => {
    const length = nanometres(63 * SIXTY_FOURTH);
    expect(printLength(length, US)).toBe('≈ 1"');
    expect(printLength(length, { ...US, denominator: 32 })).toBe('≈ 1"');
    expect(printLength(length, { ...US, denominator: 64 })).toBe('63/64"');
    expect(printLength(nanometres(767 * SIXTY_FOURTH), US)).toBe("≈ 1'");
    expect(printLength(nanometres(1_690_000_000), US)).toBe('≈ 5\' 6 9/16"');
  });
});

describe('millimetres', () => {
  it.each([
    [1_690_000_000, '1,690 mm'],
    [44_500_000, '44.5 mm'],
    [44_450_000, '≈ 44.5 mm'],
    [25_400_000, '25.4 mm'],
    [1, '≈ 0 mm'],
    [99_999_999_999, '≈ 100,000 mm'],
  ])('%d nm is %s', (length, text) => {
    expect(printLength(nanometres(length), { prefer: 'metric' })).toBe(text);
  });
});

it('quarters have a name only where lumber is sold so', () => {
  expect([0.75, 1, 1.25, 2, 2.25, 2.5, 6, 6.5].map((count) => printQuarters(inches(count)))).toEqual([
    undefined,
    '4/4',
    '5/4',
    '8/4',
    undefined,
    '10/4',
    '24/4',
    undefined,
  ]);
  expect(printQuarters(nanometres(50_800_001))).toBeUndefined();
  for (const text of ['4/4', '5/4', '6/4', '7/4', '8/4', '10/4', '12/4', '16/4']) {
    expect(printQuarters(unwrap(parseLength(text, { ...US, mode: 'thickness' })))).toBe(text);
  }
});

describe('for any length', () => {
  const length = fc.oneof(
    fc.nat({ max: 100_000_000_000 }),
    fc.nat({ max: 200_000 }).map((steps) => steps * SIXTY_FOURTH),
    fc.nat({ max: 1_000_000 }).map((tenths) => tenths * 100_000),
  );
  const system = fc.constantFrom<UnitSystem>('metric', 'imperial');

  it('the exact print is read back to the nanometre, whatever the reader prefers', () => {
    fc.assert(
      fc.property(length, system, system, (nm, prefer, reader) => {
        const text = printLengthExact(nanometres(nm), prefer);
        expect(parseLength(text, { prefer: reader })).toEqual({ ok: true, value: nm });
      }),
    );
  });

  it('without ≈ it is the length itself, with it no more than half a step away', () => {
    fc.assert(
      fc.property(
        // Within half a step of 100 m the nearest fraction may lie past the longest length, which no one may type.
        length.filter((nm) => nm <= 99_000_000_000),
        system,
        fc.constantFrom(16 as const, 32 as const, 64 as const),
        fc.constantFrom('feet' as const, 'inches' as const),
        (nm, prefer, denominator, style) => {
          const text = printLength(nanometres(nm), { prefer, denominator, style });
          const back = unwrap(parseLength(text.replace('≈ ', ''), { prefer }));
          const off = Math.abs(back - nm);
          expect(off === 0).toBe(!text.startsWith('≈'));
          expect(off).toBeLessThanOrEqual(prefer === 'metric' ? 50_000 : 25_400_000 / denominator / 2);
        },
      ),
    );
  });
});
