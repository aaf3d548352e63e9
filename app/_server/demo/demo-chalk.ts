import type { ChalkLine } from '@/shared/outline/station';
import { nanometres } from '@/shared/units/nanometres';

const MM = 1_000_000;
/** About so far apart, as a maker tapes along an edge. */
const APART_MM = 120;

type Grown = {
  /** Millimetres: the length, and the widths at the start, half way and the end. */
  length: number;
  widths: readonly [start: number, middle: number, end: number];
  /** How far the slab bows sideways from its chalk line. */
  bend?: number;
  /** Which edges grew; a sawn one is straight. */
  live?: { left: boolean; right: boolean };
};

/**
 * Stations along a slab as it might have grown: three widths as they are told, and between them edges that swell and waver,
 * each in its own way by its seed, the same every time. Whole millimetres, as they are read off a tape.
 */
export function growChalkLine(
  seed: number,
  { length, widths, bend = 0, live = { left: true, right: true } }: Grown,
): ChalkLine {
  const count = 2 * Math.round(length / APART_MM / 2);
  const wave = (side: number) => {
    const phases = [1, 2, 3].map((salt) => steady(seed * 7 + side * 31 + salt) * 2 * Math.PI);
    const height = (widths[0] + widths[1] + widths[2]) * 0.012;
    // Nothing at the start, half way and at the end, where the widths are known.
    const between = (t: number) => 1 - Math.cos(2 * Math.PI * t) ** 8;
    return (t: number) =>
      phases.reduce(
        (sum, phase, nr) => sum + (Math.sin(t * Math.PI * (2.6 + nr * 3.1) + phase) * height) / (nr + 1) ** 1.5,
        0,
      ) * between(t);
  };
  const [left, right] = [wave(1), wave(2)];
  const stations = Array.from({ length: count + 1 }, (_, nr) => {
    const t = nr / count;
    const half = widthAt(widths, t) / 2;
    const aside = bend * Math.sin(t * Math.PI);
    return {
      at: whole(length * t),
      left: whole(half + aside + (live.left ? left(t) : 0)),
      right: whole(half - aside + (live.right ? right(t) : 0)),
    };
  });
  return { stations };
}

/** The smooth width through the three that are known. */
const widthAt = ([start, middle, end]: Grown['widths'], t: number) =>
  start * (1 - t) * (1 - 2 * t) + middle * 4 * t * (1 - t) + end * t * (2 * t - 1);

const whole = (mm: number) => nanometres(Math.round(mm) * MM);

/** A steady number from 0 up to 1 for a whole one. */
function steady(salt: number): number {
  let mixed = Math.imul(salt ^ (salt >>> 15), 2246822519) ^ 374761393;
  mixed = Math.imul(mixed ^ (mixed >>> 13), 3266489917);
  return ((mixed ^ (mixed >>> 16)) >>> 0) / 4294967296;
}
