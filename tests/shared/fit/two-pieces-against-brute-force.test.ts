import { describe, expect, it } from 'vitest';
import { fitBookmatched } from '@/shared/fit/fit-bookmatched';
import { type FitRequest, readRequest, regionFor, type SlabToSearch } from '@/shared/fit/fit-request';
import { fitRiver, type RiverRequest } from '@/shared/fit/fit-river';
import type { TopShape } from '@/shared/fit/top-shape';
import { unwrap } from '@/shared/result/result';
import { bruteHalf, type Held, isSound, laid, measuredRiver, pointsOver } from './brute-two-pieces';
import { mm, numbersFrom, randomSlab } from './random-slab';

const KIND = { length: [650, 900], width: [150, 260], waviness: 30, stations: 12 } as const;
const SHAPES: readonly TopShape[] = [
  { kind: 'rectangle', length: mm(600), width: mm(300), cornerRadius: mm(90) },
  { kind: 'oval', length: mm(640), width: mm(320) },
  { kind: 'round', diameter: mm(340) },
  { kind: 'superellipse', length: mm(620), width: mm(310), exponent: 2.5 },
];
const ask = (shape: TopShape, more: Partial<FitRequest> = {}): FitRequest => ({
  shape,
  grainWindow: 4,
  edgeAllowance: mm(4),
  trims: { start: mm(15), end: mm(0) },
  filling: true,
  nearlyFrom: 1,
  ...more,
});
/** A hundredth of a millimetre, in micrometres: what may be drawn inside a true curve, and no more than a hair of it. */
const HAIR = 25;
const degrees = (angle: number) => (angle * Math.PI) / 180;

describe.each(SHAPES)('a bookmatched $kind, on 40 pairs', (shape) => {
  const request = unwrap(readRequest(ask(shape)));
  const next = numbersFrom(shape.kind.length * 101);
  const pairs = Array.from({ length: 40 }, (_, nr) => {
    // Sisters are alike: one board's outline, and the next a shade off it.
    const seed = Math.floor(next() * 1e6);
    const sister = (waviness: number) => randomSlab(`${nr}`, numbersFrom(seed), { ...KIND, waviness });
    const slabs = [sister(30), sister(34)] as const;
    return { slabs, regions: slabs.map((slab) => regionFor(slab, request)), fit: fitBookmatched(slabs, request) };
  });

  it('never lies where a point of a half is not in sound wood of both sisters', () => {
    const yes = pairs.flatMap(({ regions, fit }) => (fit.answer === 'yes' ? [{ regions, place: fit.place }] : []));
    expect(yes.length).toBeGreaterThan(3);
    expect(yes.length).toBeLessThan(38);
    for (const { regions, place } of yes) {
      const { part, placement } = place;
      if (part.part !== 'above') throw new Error(part.part);
      expect(Math.abs(placement.angle)).toBeLessThanOrEqual(request.window + 1e-12);
      const net = pointsOver(request.sizes, 0, { over: part.over, shrunk: HAIR, step: 8000 });
      for (const region of regions) {
        const astray = net.filter(({ x, y }) => !isSound(region, laid(placement, x, y), region.clearance - 1));
        expect(astray).toEqual([]);
      }
    }
  });

  it('is found wherever a grid of 8 mm and 2° finds a place', { timeout: 120_000 }, () => {
    const angles = [0, 2, -2, 4, -4].map(degrees);
    const noes = pairs.filter(({ fit }) => fit.answer !== 'yes');
    expect(noes.length).toBeGreaterThan(3);
    const missed = noes.filter(({ regions }) => bruteHalf(regions, request.sizes, { step: 8000, angles }));
    expect(missed.map(({ slabs }) => slabs[0].id)).toEqual([]);
    // The grid does find some of those said yes to, or it would prove nothing.
    const sure = pairs.filter(({ fit }) => fit.answer === 'yes').slice(0, 6);
    const found = sure.filter(({ regions }) => bruteHalf(regions, request.sizes, { step: 8000, angles }));
    expect(found.length).toBeGreaterThan(sure.length / 3);
  });
});

describe.each(SHAPES)('a $kind of two pieces either side of a river, on 40 pairs', (shape) => {
  const river: RiverRequest = { least: mm(30), leastWood: mm(50), kerf: mm(4), thickness: mm(40) };
  const request = unwrap(readRequest(ask(shape, { edgeAllowance: mm(0) })));
  const { sizes } = request;
  const from = sizes.b - river.leastWood / 1000;
  const next = numbersFrom(shape.kind.length * 77);
  const pairs = Array.from({ length: 40 }, (_, nr) => {
    const one = randomSlab(`${nr} one`, next, KIND);
    // Every fifth is one slab sawn down its length.
    const slabs = nr % 5 === 0 ? ([one] as const) : ([one, randomSlab(`${nr} two`, next, KIND)] as const);
    return { slabs, fit: fitRiver(slabs, request, river) };
  });
  const yes = pairs.flatMap(({ slabs, fit }) => (fit.answer === 'yes' ? [{ slabs, fit }] : []));
  const regionOf = (slab: SlabToSearch | undefined) => {
    if (!slab) throw new Error('No slab');
    return regionFor(slab, request);
  };

  it('has both backs in sound wood, whole', () => {
    expect(yes.length).toBeGreaterThan(5);
    for (const { slabs, fit } of yes) {
      for (const { slab, part, placement } of fit.pieces) {
        if (part.part !== 'above') throw new Error(part.part);
        const region = regionOf(slabs[slab] ?? slabs[0]);
        const net = pointsOver(sizes, from, { over: part.over, shrunk: HAIR, step: 6000 });
        expect(net.filter(({ x, y }) => !isSound(region, laid(placement, x, y), -1))).toEqual([]);
      }
    }
  });

  it('has a river nowhere narrower than asked, and the resin it says, by rule and pencil', () => {
    for (const { slabs, fit } of yes) {
      const held = fit.pieces.map(({ part, placement }): Held => {
        const isOver = part.part === 'above' && part.over;
        return { ...placement, angle: placement.angle + (isOver ? Math.PI : 0) };
      });
      const [one, two] = held;
      if (!one || !two) throw new Error('Two pieces');
      const regions = [regionOf(slabs[0]), regionOf(slabs[1] ?? slabs[0])] as const;
      const { between, area, open } = measuredRiver(regions, [one, two], sizes, from, 160);
      // Half a millimetre of the rule at both banks.
      for (const gap of between) expect(gap).toBeGreaterThanOrEqual(river.least / 1000 - 1100);
      // Half a millimetre of the rule at both banks, and 160 strips for the curve of the edge.
      const doubt = 2 * sizes.a * 1000 + area * 0.02;
      expect(Math.abs(area - fit.river.area)).toBeLessThan(doubt);
      // The outlines leave no more open than the banks do, and no less than is bare of wood.
      const filled = (fit.resin / 40) * 1e6;
      expect(filled).toBeLessThan(area + doubt);
      expect(filled).toBeGreaterThan(open - doubt);
    }
  });
});
