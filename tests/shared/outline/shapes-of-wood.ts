import type { Ring } from '@/shared/outline/outline';
import { outlineFromPoints } from '@/shared/outline/outline-from-points';
import type { ChalkLine } from '@/shared/outline/station';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';

export const mm = (millimetres: number) => nanometres(Math.round(millimetres * 1_000_000));

/** Points in millimetres to a ring in micrometres. */
export const ringOf = (...points: readonly (readonly [number, number])[]): Ring =>
  points.map(([x, y]) => ({ x: Math.round(x * 1000), y: Math.round(y * 1000) }));

export const outlineOf = (edge: Ring, ...gaps: readonly Ring[]) => unwrap(outlineFromPoints({ edge, gaps }));

export const rectangle = (long: number, wide: number) =>
  outlineOf(ringOf([0, -wide / 2], [long, -wide / 2], [long, wide / 2], [0, wide / 2]));

/** Stations in millimetres: along, left, right. */
export const line = (...rows: readonly (readonly [number, number, number])[]): ChalkLine => ({
  stations: rows.map(([at, left, right]) => ({ at: mm(at), left: mm(left), right: mm(right) })),
});

/** A regular polygon round a circle of that radius, in millimetres. */
export const polygonRound = (sides: number, radius: number): Ring =>
  ringOf(
    ...Array.from({ length: sides }, (_, nr) => {
      const angle = (2 * Math.PI * nr) / sides;
      return [radius * Math.cos(angle), radius * Math.sin(angle)] as const;
    }),
  );
