import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/**
 * How far off something may be, in words: rounded up to whole millimetres or to sixteenths of an inch, never to nothing.
 * `sayMiss(1.2, 'metric')` is `2 mm`; `sayMiss(1.2, 'imperial')` is `1/16"`.
 */
export function sayMiss(millimetres: number, prefer: UnitSystem): string {
  if (!Number.isFinite(millimetres)) return 'more than can be said';
  const step = prefer === 'metric' ? 1 : 25.4 / 16;
  const steps = Math.max(1, Math.ceil(millimetres / step - 1e-9));
  return printLength(nanometres(Math.round(steps * step * 1e6)), { prefer });
}
