import type { Parts } from '@/shared/pour/resin-sheet';
import { err, ok, type Result } from '@/shared/result/result';
import { type Milligrams, milligrams } from '@/shared/units/stock-unit';

/** What is weighed for one batch, and how far the rounding put the ratio off, tenths of a per cent of part B. */
export type WeighedOut = {
  readonly a: Milligrams;
  readonly b: Milligrams;
  readonly total: Milligrams;
  readonly ratioErrorTenths: number;
};

export type WeighOutError = {
  readonly code: 'not-above-zero' | 'step-too-coarse';
  readonly field: 'total' | 'step' | 'parts';
};

/**
 * Splits a batch into part A and part B in steps of the scale, the total kept to the step. Of the two ways to round, the
 * one with the smaller error of ratio is taken. `step-too-coarse` where a part would come to nothing. 500 g at 100 to 45
 * is 345 and 155 g on a scale of 1 g, 344.8 and 155.2 g on one of 0.1 g.
 */
export function weighOut(total: Milligrams, parts: Parts, step: Milligrams): Result<WeighedOut, WeighOutError> {
  if (!(step > 0)) return err({ code: 'not-above-zero', field: 'step' });
  if (!(total > 0)) return err({ code: 'not-above-zero', field: 'total' });
  if (!(parts.a > 0 && parts.b > 0)) return err({ code: 'not-above-zero', field: 'parts' });
  const steps = Math.round(total / step);
  const exact = (steps * parts.b) / (parts.a + parts.b);
  const wanted = parts.b / parts.a;
  const off = (b: number) => Math.abs(b / (steps - b) / wanted - 1);
  const b = [Math.floor(exact), Math.ceil(exact)].sort((one, two) => off(one) - off(two))[0] ?? 0;
  if (b <= 0 || b >= steps) return err({ code: 'step-too-coarse', field: 'step' });
  return ok({
    a: milligrams((steps - b) * step),
    b: milligrams(b * step),
    total: milligrams(steps * step),
    ratioErrorTenths: Math.round((b / (steps - b) / wanted - 1) * 1000),
  });
}
