import { describe, expect, it } from 'vitest';
import { fitOnePiece } from '@/shared/fit/fit-one-piece';
import { type FitRequest, readRequest, regionFor } from '@/shared/fit/fit-request';
import { holdsShape } from '@/shared/fit/holds-shape';
import type { TopShape } from '@/shared/fit/top-shape';
import { unwrap } from '@/shared/result/result';
import { bruteForce } from './brute-force';
import { mm, numbersFrom, randomSlab } from './random-slab';

// A third of the size of a table, so that a fine grid is quick; the search knows no size.
const KIND = { length: [650, 1000], width: [230, 420], waviness: 40, stations: 14 } as const;

const SHAPES: readonly TopShape[] = [
  { kind: 'rectangle', length: mm(640), width: mm(250), cornerRadius: mm(0) },
  { kind: 'rectangle', length: mm(600), width: mm(270), cornerRadius: mm(80) },
  { kind: 'oval', length: mm(680), width: mm(280) },
  { kind: 'round', diameter: mm(270) },
  { kind: 'superellipse', length: mm(640), width: mm(270), exponent: 2.6 },
];

const ask = (shape: TopShape): FitRequest => ({
  shape,
  grainWindow: 6,
  edgeAllowance: mm(5),
  trims: { start: mm(15), end: mm(0) },
  filling: true,
  nearlyFrom: 1,
});

describe.each(SHAPES)('whether a $kind can be cut, on 80 slabs', (shape) => {
  const request = unwrap(readRequest(ask(shape)));
  const next = numbersFrom(shape.kind.length * 7919 + Number(request.sizes.b));
  const slabs = Array.from({ length: 80 }, (_, nr) => randomSlab(`${nr}`, next, KIND));
  const degrees = shape.kind === 'round' ? [0] : [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5, 6, -6];
  const angles = degrees.map((angle) => (angle * Math.PI) / 180);
  const asked = slabs.map((slab) => ({ slab, region: regionFor(slab, request), fit: fitOnePiece(slab, request) }));

  it('says yes wherever a grid of 4 mm and 1° finds a place', { timeout: 120_000 }, () => {
    // Slabs whose yes is judged below need no grid; of the first ten it must find some too, or it proves nothing.
    const sure = asked.filter(({ fit }) => fit.answer === 'yes').slice(0, 10);
    const grid = { step: 4000, angles, around: 180 };
    expect(sure.filter(({ region }) => bruteForce(region, request.sizes, grid)).length).toBeGreaterThan(
      sure.length / 3,
    );
    const missed = asked.filter(({ region, fit }) => {
      if (fit.answer === 'yes') return false;
      const place = bruteForce(region, request.sizes, grid);
      // The points of its edge may miss a corner of the wood; only a place that truly holds the top counts.
      return place !== undefined && holdsShape(region, request.sizes, { part: 'whole' }, place);
    });
    expect(missed.map(({ slab }) => slab.id)).toEqual([]);
  });

  it('never says yes to a place that a test with other means refuses', () => {
    const yes = asked.flatMap(({ region, fit }) => (fit.answer === 'yes' ? [{ region, place: fit.place }] : []));
    expect(yes.length).toBeGreaterThan(5);
    expect(yes.length).toBeLessThan(78);
    for (const { region, place } of yes) {
      const { x, y, angle } = place.placement;
      expect(Math.abs(angle)).toBeLessThanOrEqual(request.window + 1e-12);
      // The same top, a fiftieth of a millimetre smaller, at this very place, edge point by edge point.
      const { sizes } = request;
      const smaller = { ...sizes, a: sizes.a - 20, b: sizes.b - 20 };
      const agreed = bruteForce(region, smaller, { step: 1, angles: [angle], around: 720, at: { x, y } });
      expect(agreed).toBeDefined();
    }
  });
});
