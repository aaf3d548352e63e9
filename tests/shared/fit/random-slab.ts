import type { SlabToSearch } from '@/shared/fit/fit-request';
import { outlineFromStations } from '@/shared/outline/outline-from-stations';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';

/** Numbers from 0 to 1 that are the same on every run (a linear congruential generator). */
export function numbersFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

export const mm = (millimetres: number) => nanometres(Math.round(millimetres * 1_000_000));

export type Kind = {
  length: readonly [number, number];
  width: readonly [number, number];
  waviness: number;
  stations: number;
};

/** A slab as one comes off the mill: a bow along its length, a taper, and a waver at every station; some knots. */
export function randomSlab(id: string, next: () => number, { length, width, waviness, stations }: Kind): SlabToSearch {
  const between = ([low, high]: readonly [number, number]) => low + (high - low) * next();
  const [long, wide] = [between(length), between(width)];
  const [bow, taper] = [(next() - 0.5) * waviness * 2, (next() - 0.5) * 0.3];
  const run = Array.from({ length: stations }, (_, nr) => {
    const along = nr / (stations - 1);
    const half = (wide / 2) * (1 + taper * (along - 0.5));
    const off = bow * 4 * along * (1 - along);
    const waver = () => (next() - 0.5) * waviness;
    return { at: mm(long * along), left: mm(half + off + waver()), right: mm(half - off + waver()) };
  });
  const defects = Array.from({ length: Math.floor(next() * 3) }, () => ({
    kind: 'knot' as const,
    place: {
      shape: 'circle' as const,
      centre: { x: Math.round(long * next() * 1000), y: Math.round((next() - 0.5) * wide * 900) },
      radius: Math.round(1000 * (10 + 30 * next())),
    },
    depth: { face: 'through' as const },
    decision: next() < 0.5 ? ('keep-out' as const) : ('fill' as const),
  }));
  return { id, outline: unwrap(outlineFromStations({ stations: run })), defects, endChecks: [] };
}
