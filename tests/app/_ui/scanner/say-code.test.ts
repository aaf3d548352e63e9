import { describe, expect, it } from 'vitest';
import { sayCode } from '@/app/_ui/scanner/say-code';
import { unwrap } from '@/shared/result/result';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

describe('a code in a sentence', () => {
  it('is our own label as it is printed', () => {
    const label = unwrap(mintOwnLabel('container', 123_456)).code;
    expect(sayCode(label)).toBe(printOwnLabel(label));
  });

  it('is anything else as it was read, cut where it is long', () => {
    expect(sayCode('09521234543213')).toBe('09521234543213');
    expect(sayCode('x'.repeat(300))).toBe(`${'x'.repeat(40)}…`);
  });
});
