import type { Point } from '@/shared/outline/point';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

const SIXTEENTH_UM = 25_400 / 16;

/** A tapped point as it would be typed: to the millimetre, or the sixteenth of an inch; a finger is no finer. */
export function writePoint({ x, y }: Point, prefer: UnitSystem): string {
  const step = prefer === 'metric' ? 1000 : SIXTEENTH_UM;
  const say = (um: number) => {
    const length = printLength(nanometres(Math.round(Math.round(Math.abs(um) / step) * step * 1000)), {
      prefer,
      style: 'inches',
    }).replaceAll(',', '');
    return `${um < 0 ? '-' : ''}${length}`;
  };
  return `${say(x)}; ${say(y)}`;
}
