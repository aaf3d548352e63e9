// Areas and pieces of random cuts against the JTS Topology Suite (jsts 2.12.1, LocationTech), which works in floating point
// by other methods: overlay, buffer and polygonizer.
import fc from 'fast-check';
import InteriorPointArea from 'jsts/org/locationtech/jts/algorithm/InteriorPointArea.js';
import SimplePointInAreaLocator from 'jsts/org/locationtech/jts/algorithm/locate/SimplePointInAreaLocator.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import type Geometry from 'jsts/org/locationtech/jts/geom/Geometry.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import Location from 'jsts/org/locationtech/jts/geom/Location.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import Polygonizer from 'jsts/org/locationtech/jts/operation/polygonize/Polygonizer.js';
import UnionOp from 'jsts/org/locationtech/jts/operation/union/UnionOp.js';
import IsValidOp from 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js';
import { describe, expect, it } from 'vitest';
import { boxAround, runThrough } from '@/shared/outline/cut-line';
import { cutWood } from '@/shared/outline/cut-wood';
import type { Outline, Ring } from '@/shared/outline/outline';
import { outlineArea, twiceArea } from '@/shared/outline/outline-area';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { anyLine, anySlab } from '../shared/outline/any-cut';

const factory = new GeometryFactory();
const place = ({ x, y }: { x: number; y: number }) => new Coordinate(x / 1000, y / 1000);
const closed = (ring: Ring) => factory.createLinearRing([...ring, ...ring.slice(0, 1)].map(place));
const polygon = ({ ring, holes }: Outline) => factory.createPolygon(closed(ring), holes.map(closed));
/** A square centimetre: smaller bits go with the sawdust. */
const CHIP = 100;
/** New corners are rounded to the micrometre at both ends of edges no longer than half a metre. */
const ROUNDING = 20;

const isIn = (point: Coordinate, wood: Geometry) => SimplePointInAreaLocator.locate(point, wood) === Location.INTERIOR;

const partsOf = (geometry: Geometry) =>
  Array.from({ length: geometry.getNumGeometries() }, (_, nr) => geometry.getGeometryN(nr).getArea())
    .filter((area) => area >= CHIP)
    .sort((a, b) => a - b);

describe('against the JTS Topology Suite', () => {
  it('an outline has the same area, and is valid', () => {
    fc.assert(
      fc.property(anySlab, (slab) => {
        expect(IsValidOp.isValid(polygon(slab))).toBe(true);
        expect(polygon(slab).getArea()).toBeCloseTo(outlineArea(slab), 3);
      }),
      { numRuns: 100 },
    );
  });

  it('a straight saw cut leaves the same pieces', () => {
    let cuts = 0;
    fc.assert(
      fc.property(
        anySlab,
        anyLine.filter(({ kerf, points }) => kerf > 0 && points.length === 2),
        (slab, line) => {
          const cut = cutWood(slab, [line]);
          const through = runThrough(line.points, boxAround(boundsOf(slab.ring), line.points));
          if (!cut.ok || typeof through === 'string') return;
          cuts += 1;
          const flat = new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 5);
          const strip = BufferOp.bufferOp(factory.createLineString(through.map(place)), line.kerf / 2000, flat);
          const theirs = partsOf(OverlayOp.overlayOp(polygon(slab), strip, OverlayOp.DIFFERENCE));
          const ours = cut.value.map(outlineArea).sort((a, b) => a - b);
          // A bit at the limit of a square centimetre may count here and not there.
          const near = [...theirs, ...ours].some((area) => Math.abs(area - CHIP) < ROUNDING);
          if (near) return;
          expect(ours).toHaveLength(theirs.length);
          ours.forEach((area, nr) => {
            expect(Math.abs(area - (theirs[nr] ?? 0))).toBeLessThan(ROUNDING);
          });
          for (const piece of cut.value) expect(IsValidOp.isValid(polygon(piece))).toBe(true);
        },
      ),
      { numRuns: 250 },
    );
    expect(cuts).toBeGreaterThan(80);
  });

  it('a jagged break leaves the same pieces, and no wood is lost', () => {
    let cuts = 0;
    fc.assert(
      fc.property(
        anySlab,
        anyLine.map((line) => ({ ...line, kerf: 0 })),
        (slab, line) => {
          const cut = cutWood(slab, [line]);
          const through = runThrough(line.points, boxAround(boundsOf(slab.ring), line.points));
          if (!cut.ok || typeof through === 'string') return;
          cuts += 1;
          const wood = polygon(slab);
          const polygonizer = new Polygonizer();
          polygonizer.add(UnionOp.union(wood.getBoundary(), factory.createLineString(through.map(place))));
          const faces = polygonizer.getPolygons();
          const faceAreas = Array.from({ length: faces.size() }, (_, nr) => faces.get(nr) as Geometry)
            .filter((face) => isIn(InteriorPointArea.getInteriorPoint(face), wood))
            .map((face) => face.getArea());
          const theirs = faceAreas.filter((area) => area >= CHIP).sort((a, b) => a - b);
          const ours = cut.value.map(outlineArea).sort((a, b) => a - b);
          if ([...theirs, ...ours].some((area) => Math.abs(area - CHIP) < ROUNDING)) return;
          expect(ours).toHaveLength(theirs.length);
          ours.forEach((area, nr) => {
            expect(Math.abs(area - (theirs[nr] ?? 0))).toBeLessThan(ROUNDING);
          });
          const lost = twiceArea(slab) - cut.value.reduce((sum, piece) => sum + twiceArea(piece), 0);
          const bits = faceAreas.filter((area) => area < CHIP).reduce((sum, area) => sum + area, 0);
          expect(Math.abs(lost / 2e6 - bits)).toBeLessThan(ROUNDING);
        },
      ),
      { numRuns: 250 },
    );
    expect(cuts).toBeGreaterThan(80);
  });
});
