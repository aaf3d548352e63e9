// The river between two slabs against the JTS Topology Suite (jsts 2.12.1, LocationTech), its overlay and buffer: here the
// top is laid on each slab and the wood in it measured there, so that nothing of how the river is put together is shared.
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import type Geometry from 'jsts/org/locationtech/jts/geom/Geometry.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import { describe, expect, it } from 'vitest';
import { type FitRequest, readRequest, type SlabToSearch } from '@/shared/fit/fit-request';
import { fitRiver, type RiverRequest, riverAsCut } from '@/shared/fit/fit-river';
import { type RiverPiece, riverVoid } from '@/shared/fit/river-void';
import type { HalfSizes, TopShape } from '@/shared/fit/top-shape';
import { outlineFromStations } from '@/shared/outline/outline-from-stations';
import { measureVoid } from '@/shared/pour/void-volume';
import { unwrap } from '@/shared/result/result';
import { mm, numbersFrom, randomSlab } from '../shared/fit/random-slab';

const factory = new GeometryFactory();
type At = { readonly x: number; readonly y: number };
/** Millimetres: the outlines are in micrometres. */
const ringOf = (points: readonly At[]) =>
  factory.createLinearRing([...points, ...points.slice(0, 1)].map(({ x, y }) => new Coordinate(x / 1000, y / 1000)));
const partsOf = (geometry: Geometry) =>
  Array.from({ length: geometry.getNumGeometries() }, (_, nr) => geometry.getGeometryN(nr));

/** Every closed line round an area; the types of jsts leave it out. */
const rimOf = (area: Geometry) => (area as Geometry & { getBoundary(): Geometry }).getBoundary();

/** The edge of a top by its formula, a point every so often; a rectangle by its corners. */
function edgeOf(sizes: HalfSizes): At[] {
  const { a, b } = sizes;
  if (sizes.curve === 'corners') {
    if (sizes.r > 0) throw new Error('Only sharp corners are tried here.');
    return [
      { x: a, y: b },
      { x: -a, y: b },
      { x: -a, y: -b },
      { x: a, y: -b },
    ];
  }
  const { n } = sizes;
  return Array.from({ length: 6000 }, (_, nr) => {
    const [c, s] = [Math.cos((nr * Math.PI) / 3000), Math.sin((nr * Math.PI) / 3000)];
    return { x: a * Math.sign(c) * Math.abs(c) ** (2 / n), y: b * Math.sign(s) * Math.abs(s) ** (2 / n) };
  });
}

/** The wood one slab gives to the top, in its own place; and how long its edge inside the top is. Millimetres. */
function woodOf(
  slab: SlabToSearch,
  { part, placement }: RiverPiece,
  sizes: HalfSizes,
  isSecond: boolean,
  trim: number,
) {
  if (part.part !== 'above') throw new Error(part.part);
  const angle = placement.angle + (part.over ? Math.PI : 0);
  // A piece sees its back upwards: the second has the top turned half round.
  const lay = (points: readonly At[]) =>
    points.map(({ x, y }) => {
      const [u, v] = [isSecond ? -x : x, (isSecond ? -y : y) - part.from];
      return {
        x: placement.x + u * Math.cos(angle) - v * Math.sin(angle),
        y: placement.y + u * Math.sin(angle) + v * Math.cos(angle),
      };
    });
  const top = factory.createPolygon(ringOf(lay(edgeOf(sizes))), []);
  const { ring, holes } = slab.outline;
  const kept = factory.createPolygon(ringOf(box(Math.min(...ring.map(({ x }) => x)) + trim)), []);
  const wood = OverlayOp.intersection(factory.createPolygon(ringOf(ring), holes.map(ringOf)), kept);
  const side = isSecond ? -1 : 1;
  const back = factory.createPolygon(
    ringOf(
      lay([
        { x: -side * sizes.a, y: side * part.from },
        { x: side * sizes.a, y: side * part.from },
        { x: side * sizes.a, y: side * sizes.b },
        { x: -side * sizes.a, y: side * sizes.b },
      ]),
    ),
    [],
  );
  const parts = partsOf(OverlayOp.intersection(wood, top));
  const inBack = (one: Geometry) => OverlayOp.intersection(one, back).getArea();
  const own = parts.reduce((most, one) => (inBack(one) > inBack(most) ? one : most));
  const rim = BufferOp.bufferOp(rimOf(top), 0.05);
  return { area: own.getArea(), bank: OverlayOp.difference(rimOf(own), rim).getLength(), top: top.getArea() };
}

const box = (left: number): At[] => [
  { x: left, y: -5e6 },
  { x: 9e6, y: -5e6 },
  { x: 9e6, y: 5e6 },
  { x: left, y: 5e6 },
];

const SHAPES: readonly TopShape[] = [
  { kind: 'rectangle', length: mm(600), width: mm(300), cornerRadius: mm(0) },
  { kind: 'oval', length: mm(640), width: mm(320) },
  { kind: 'superellipse', length: mm(620), width: mm(310), exponent: 3 },
];
const KIND = { length: [700, 900], width: [160, 260], waviness: 30, stations: 12 } as const;
const RIVER: RiverRequest = { least: mm(30), leastWood: mm(50), kerf: mm(4), thickness: mm(40) };
const TRIM = 15;

describe.each(SHAPES)('the river of a $kind, on 30 pairs', (shape) => {
  const asked: FitRequest = {
    shape,
    grainWindow: 4,
    edgeAllowance: mm(0),
    trims: { start: mm(TRIM), end: mm(0) },
    filling: true,
    nearlyFrom: 1,
  };
  const request = unwrap(readRequest(asked));
  const next = numbersFrom(shape.kind.length * 31);
  const found = Array.from({ length: 30 }, (_, nr) => {
    const one = randomSlab(`${nr} one`, next, KIND);
    const slabs = nr % 5 === 0 ? ([one] as const) : ([one, randomSlab(`${nr} two`, next, KIND)] as const);
    return { slabs, fit: fitRiver(slabs, request, RIVER) };
  }).flatMap(({ slabs, fit }) => (fit.answer === 'yes' ? [{ slabs, fit }] : []));

  it('has the area and the banks that JTS gives, and fills the pour with as much', () => {
    expect(found.length).toBeGreaterThan(5);
    for (const { slabs, fit } of found) {
      const [first, second = first] = slabs;
      const one = woodOf(first, fit.pieces[0], request.sizes, false, TRIM * 1000);
      const two = woodOf(second, fit.pieces[1], request.sizes, true, TRIM * 1000);
      const { area, banks } = riverAsCut(slabs, request, { fit, part: 1 });
      // Curves are drawn at most 20 µm inside, all round; corners that are cut are whole micrometres.
      const round = 2 * (request.sizes.a + request.sizes.b) * 2;
      const doubt = request.sizes.curve === 'power' ? (0.02 * round) / 1000 + 2 : 2;
      expect(Math.abs(area - (one.top - one.area - two.area))).toBeLessThan(doubt);
      // Where a bank runs out to the edge of the top JTS leaves a twentieth of a millimetre on either side of it out; where
      // it does so at a sharp angle that is a longer piece of the bank.
      expect(Math.abs(banks[0] - one.bank)).toBeLessThan(6);
      expect(Math.abs(banks[1] - two.bank)).toBeLessThan(6);
      const space = unwrap(measureVoid({ from: 'fills', fills: [{ area, depth: RIVER.thickness }] }));
      expect(Math.abs(space.holds - (one.top - one.area - two.area) * 40)).toBeLessThan(doubt * 40);
      expect(space.holds).toBe(Math.round(fit.resin));
    }
  });
});

describe('the river of pieces that are held by hand', () => {
  const sizes: HalfSizes = { a: 750_000, b: 300_000, curve: 'corners', r: 0 };
  const board = unwrap(
    outlineFromStations({
      stations: [0, 2000].map((at) => ({ at: mm(at), left: mm(125), right: mm(125) })),
    }),
  );
  /** Held so that 200 mm of the board's 250 lie in the top: its back is 50 mm beyond the edge. */
  const at = (slab: 0 | 1): RiverPiece => ({
    slab,
    part: { part: 'above', from: 250_000, over: false },
    placement: { x: 1_000_000, y: 25_000, angle: 0 },
  });

  it('is a rectangle between straight boards: 1500 mm long, 600 less twice 200 mm wide', () => {
    const { area, banks, woods } = riverVoid([board, board], sizes, [at(0), at(1)]);
    expect(area).toBe(1500 * 200);
    expect(banks).toEqual([1500, 1500]);
    expect(woods.map(({ ring }) => Math.sign(ring[0]?.y ?? 0))).toEqual([1, -1]);
  });

  it('has a gap through the wood with it, and its rim to be sealed', () => {
    const hole = [
      { x: 900_000, y: -50_000 },
      { x: 900_000, y: 0 },
      { x: 1_000_000, y: 0 },
      { x: 1_000_000, y: -50_000 },
    ];
    const { area, banks } = riverVoid([{ ...board, holes: [hole] }, board], sizes, [at(0), at(1)]);
    expect(area).toBe(1500 * 200 + 100 * 50);
    expect(banks).toEqual([1500 + 300, 1500]);
  });

  it('counts no wood that would fall off: what comes back into the top beyond its edge', () => {
    // A hook: a straight strip whose end turns down and back below itself.
    const corners = [
      [0, 0],
      [0, -50],
      [1950, -50],
      [1950, -150],
      [1600, -150],
      [1600, -200],
      [2000, -200],
      [2000, 0],
    ] as const;
    const hook = { ring: corners.map(([x, y]) => ({ x: x * 1000, y: y * 1000 })), holes: [] };
    const held: RiverPiece = { ...at(0), placement: { x: 1_000_000, y: -50_000, angle: 0 } };
    // A top that ends before the bend has only the strip: the 150 mm of the point that lie in it hang on nothing.
    expect(riverVoid([hook, board], sizes, [held, at(1)]).area).toBe(1500 * (600 - 50 - 200));
    // One that takes the bend in has all of the hook.
    const long: HalfSizes = { ...sizes, a: 1_000_000 };
    expect(riverVoid([hook, board], long, [held, at(1)]).area).toBe(2000 * (600 - 50 - 200) - 50 * 150 - 350 * 50);
  });
});
