import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stepNumber } from '@/app/_ui/field/step-number';

describe('stepNumber', () => {
  it('leaves no crumbs of binary fractions', () => {
    expect(stepNumber('0.2', 1, { min: 0, max: 5, step: 0.1 })).toBe('0.3');
  });

  it('reads a decimal comma', () => {
    expect(stepNumber('2,5', 1, { min: 0, max: 5, step: 0.5 })).toBe('3');
  });

  it('starts from the least number when what is typed is not one', () => {
    expect(stepNumber('two', 1, { min: 1, max: 9, step: 1 })).toBe('2');
    expect(stepNumber('', 1, { min: 1, max: 9, step: 1 })).toBe('2');
  });

  it('never leaves its limits', () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom<1 | -1>(1, -1), (text, by) => {
        const next = Number(stepNumber(text, by, { min: 1, max: 20, step: 1 }));
        expect(next).toBeGreaterThanOrEqual(1);
        expect(next).toBeLessThanOrEqual(20);
      }),
    );
  });
});
