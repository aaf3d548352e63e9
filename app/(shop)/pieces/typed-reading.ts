import type { Point } from '@/shared/outline/point';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { printLengthExact } from '@/shared/units/print-length-exact';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A reading as it is typed. */
export type TypedReading = { moisture: string; along: string; across: string; depth: string; spot: string };

/** As fine as a finger or a tape puts a meter: a millimetre, or an eighth of an inch. */
const FINENESS: Record<UnitSystem, number> = { metric: 1_000_000, imperial: 3_175_000 };
/** Nearer to an end than this wood dries first. */
const KEEP_AWAY = 254_000_000;

export const freshReading = (depth = ''): TypedReading => ({ moisture: '', along: '', across: '', depth, spot: '' });

const rough = (nm: number, prefer: UnitSystem): Nanometres =>
  nanometres(Math.round(nm / FINENESS[prefer]) * FINENESS[prefer]);

/** A tap on the drawing as it would be typed: along and across, the right of the line below zero. */
export function typedPlace({ x, y }: Point, prefer: UnitSystem): Pick<TypedReading, 'along' | 'across'> {
  const across = rough(Math.abs(y) * 1000, prefer);
  const typed = printLengthExact(across, prefer);
  return {
    along: printLengthExact(rough(Math.max(0, x) * 1000, prefer), prefer),
    across: across === 0 ? '' : y < 0 ? `${typed} right` : `${typed} left`,
  };
}

/**
 * Readings to be taken along a piece at even steps, the first and the last as far from the ends as wood has to be read, or a sixth of a
 * short piece. Five along 3 m: at 254, 877, 1500, 2123 and 2746 mm.
 */
export function readingsAlong(length: Nanometres, count: number, prefer: UnitSystem, depth = ''): TypedReading[] {
  const away = Math.min(KEEP_AWAY, length / 6);
  const step = (length - 2 * away) / (count - 1);
  return Array.from({ length: count }, (_, at) => ({
    ...freshReading(depth),
    along: printLengthExact(rough(away + step * at, prefer), prefer),
  }));
}
