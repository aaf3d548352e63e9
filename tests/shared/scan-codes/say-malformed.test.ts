import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readScan } from '@/shared/scan-codes/read-scan';
import { sayMalformed } from '@/shared/scan-codes/say-malformed';
import { TODAY } from '@/tests/support/scan-codes/today';

function malformedOf(text: string, symbology?: string) {
  const reading = readScan({ text, symbology }, { today: TODAY });
  return reading.kind === 'unknown' ? reading.malformed : undefined;
}

describe('what a broken code nearly was', () => {
  it('names the digit that would fit', () => {
    const malformed = malformedOf('(01)09521234543214(10)K26-114');
    expect(malformed?.at).toBe(17);
    expect(malformed && sayMalformed(malformed).what).toBe(
      'It looks like a GS1 label, but in its part (01) GTIN the check digit does not fit: 3 would fit.',
    );
  });

  it('speaks of our own labels as ours', () => {
    const malformed = malformedOf('C4K7VMX');
    expect(malformed && sayMalformed(malformed).what).toContain('one of our own labels');
  });

  it('has whole sentences for whatever breaks, and marks a place in the text', () => {
    const almost = fc.stringMatching(/^\((01|10|17|21|8008)\)[0-9A-Z()]{0,24}$/);
    fc.assert(
      fc.property(fc.oneof(almost, fc.string(), fc.stringMatching(/^[CSBHFP]-?[0-9A-Z]{3,8}$/)), (text) => {
        const malformed = malformedOf(text);
        if (!malformed) return;
        const { what, todo } = sayMalformed(malformed);
        expect(what).toMatch(/^[A-Z].*\.$/s);
        expect(what).not.toContain('undefined');
        expect(todo).toMatch(/\.$/);
        expect(malformed.at).toBeGreaterThanOrEqual(0);
        expect(malformed.at).toBeLessThanOrEqual(text.length);
      }),
    );
  });
});
