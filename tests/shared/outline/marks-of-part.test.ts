import { describe, expect, it } from 'vitest';
import { breakLines } from '@/shared/outline/break-lines';
import { cutWood } from '@/shared/outline/cut-wood';
import type { Defect } from '@/shared/outline/defect';
import { fenceLine } from '@/shared/outline/fence-line';
import { layMark, layOutline, markInHalf } from '@/shared/outline/lay-anew';
import { edgesOfPart } from '@/shared/outline/live-edges-of-part';
import { marksOfPart } from '@/shared/outline/marks-of-part';
import { outlineArea } from '@/shared/outline/outline-area';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { type NewMark, NO_MARKS, type PieceMarks } from '@/shared/outline/piece-marks';
import { placeInside } from '@/shared/outline/place-inside';
import { thickLine } from '@/shared/outline/thick-line';
import { unwrap } from '@/shared/result/result';
import { mm, outlineOf, rectangle, ringOf } from './shapes-of-wood';

const at = (x: number, y: number) => ({ x: x * 1000, y: y * 1000 });
const slab = rectangle(2000, 500);
/** 0 to 798 mm and 802 to 2000 mm. */
const [start, rest] = unwrap(cutWood(slab, [{ points: [at(800, 0), at(800, 1)], kerf: 4000 }])) as [
  typeof slab,
  typeof slab,
];
const knot = (x: number, radius: number, more: Partial<Defect> = {}): PieceMarks['defects'][number] => ({
  id: 1,
  note: 'Tight',
  kind: 'knot',
  place: { shape: 'circle', centre: at(x, 0), radius: radius * 1000 },
  depth: { face: 'through' },
  decision: 'fill',
  ...more,
});

describe('marks on a piece that was cut', () => {
  it('stay whole where the cut missed them, also over the edge of the slab', () => {
    const marks = { ...NO_MARKS, defects: [knot(400, 40), knot(0, 60)] };
    expect(marksOfPart(marks, slab, start)).toMatchObject([
      { is: 'defect', place: { shape: 'circle', centre: at(400, 0) }, note: 'Tight' },
      { is: 'defect', place: { shape: 'circle', centre: at(0, 0), radius: 60_000 } },
    ]);
    expect(marksOfPart(marks, slab, rest)).toEqual([]);
  });

  it('become the part that is left where it ran through them', () => {
    const marks = { ...NO_MARKS, defects: [knot(800, 100)] };
    const [left, right] = [start, rest].map((part) => marksOfPart(marks, slab, part));
    const ring = (mark: NewMark | undefined) =>
      mark?.is === 'defect' && mark.place.shape === 'polygon' ? mark.place.ring : [];
    expect(boundsOf(ring(left?.[0]))).toMatchObject({ left: 700_000, right: 798_000 });
    expect(boundsOf(ring(right?.[0]))).toMatchObject({ left: 802_000, right: 900_000 });
    // A circle of 100 mm less a strip of 4 mm through its middle, each half within its 48 corners' 0.3 %.
    const half = (Math.PI * 100 * 100 - 4 * 200) / 2;
    expect(outlineArea({ ring: ring(left?.[0]), holes: [] }) / half).toBeCloseTo(1, 2);
  });

  it('are gone where hardly any of them is left', () => {
    const marks = { ...NO_MARKS, defects: [knot(758, 43)] };
    expect(marksOfPart(marks, slab, start)).toHaveLength(1);
    expect(marksOfPart(marks, slab, rest)).toEqual([]);
  });

  it('are end checks as far as they still run, in from the new end', () => {
    const checks = (depth: number) => ({
      ...NO_MARKS,
      endChecks: [{ id: 1, note: '', end: 'start' as const, depth: mm(depth) }],
    });
    expect(marksOfPart(checks(150), slab, start)).toMatchObject([{ is: 'end-check', end: 'start', depth: mm(150) }]);
    expect(marksOfPart(checks(150), slab, rest)).toEqual([]);
    expect(marksOfPart(checks(900), slab, rest)).toMatchObject([{ depth: mm(900 - 802) }]);
    // All of the piece is checked: a micrometre less than its length, for a check ends in wood.
    expect(marksOfPart(checks(900), slab, start)).toMatchObject([{ depth: mm(798) - 1000 }]);
  });

  it('are bands across what they still lie across', () => {
    const band = (x1: number, y1: number, x2: number, y2: number) => ({
      ...NO_MARKS,
      straps: [{ id: 1, note: '', from: at(x1, y1), to: at(x2, y2) }],
    });
    expect(marksOfPart(band(400, -250, 400, 250), slab, start)).toMatchObject([
      { from: at(400, -250), to: at(400, 250) },
    ]);
    expect(marksOfPart(band(400, -250, 400, 250), slab, rest)).toEqual([]);
    expect(marksOfPart(band(600, 0, 1000, 0), slab, start)).toMatchObject([{ from: at(600, 0), to: at(798, 0) }]);
    expect(marksOfPart(band(600, 0, 1000, 0), slab, rest)).toMatchObject([{ from: at(802, 0), to: at(1000, 0) }]);
  });
});

describe('a piece laid anew', () => {
  it('begins at its own start, and turned over its left is its right', () => {
    expect(boundsOf(layOutline(rest, { shift: 802_000, turned: false }).ring)).toMatchObject({
      left: 0,
      right: 1_198_000,
    });
    const lopsided = outlineOf(ringOf([0, -100], [1000, -100], [1000, 300], [0, 200]));
    const turned = layOutline(lopsided, { shift: 0, turned: true });
    expect(boundsOf(turned.ring)).toMatchObject({ bottom: -300_000, top: 100_000 });
    expect(outlineArea(turned)).toBe(outlineArea(lopsided));
    expect(layOutline(turned, { shift: 0, turned: true }).ring).toEqual(lopsided.ring);
  });

  it('takes its marks along', () => {
    const mark: NewMark = { is: 'defect', ...knot(900, 40, { depth: { face: 'A', depth: mm(5) } }) };
    expect(
      layMark(
        { ...mark, place: { shape: 'circle', centre: at(900, 50), radius: 40_000 } },
        { shift: 802_000, turned: true },
      ),
    ).toMatchObject({
      place: { centre: at(98, -50) },
      depth: { face: 'B', depth: mm(5) },
    });
  });

  it('has of a face defect what reaches into its half', () => {
    const saw = { thickness: mm(58), upper: mm(25), kerf: mm(3) };
    const deep = (face: 'A' | 'B', depth: number): NewMark => ({
      is: 'defect',
      ...knot(900, 40, { depth: { face, depth: mm(depth) } }),
    });
    expect(markInHalf(deep('A', 10), 'upper', saw)).toMatchObject({ depth: { face: 'A', depth: mm(10) } });
    expect(markInHalf(deep('A', 10), 'lower', saw)).toBeUndefined();
    expect(markInHalf(deep('A', 40), 'upper', saw)).toMatchObject({ depth: { face: 'through' } });
    // 40 mm less the 25 of the upper half and 3 of kerf.
    expect(markInHalf(deep('A', 40), 'lower', saw)).toMatchObject({ depth: { face: 'A', depth: mm(12) } });
    expect(markInHalf(deep('B', 30), 'lower', saw)).toMatchObject({ depth: { face: 'through' } });
    expect(markInHalf(deep('B', 30), 'upper', saw)).toBeUndefined();
    expect(markInHalf(deep('B', 40), 'upper', saw)).toMatchObject({ depth: { face: 'B', depth: mm(7) } });
  });
});

describe('the edges of a piece', () => {
  const rip = unwrap(cutWood(slab, [{ points: [at(0, 0), at(1, 0)], kerf: 3000 }]));

  it('are the slab’s own on the side that was not sawn', () => {
    expect(rip.map((part) => edgesOfPart(slab, part))).toEqual([
      { left: true, right: false },
      { left: false, right: true },
    ]);
    expect(edgesOfPart(slab, start)).toEqual({ left: true, right: true });
  });

  it('are not called so for less than a quarter of its length', () => {
    // Slanting from the left edge at 300 mm to the right edge at 2000 mm: the far part has 1700 of 1700 mm on the left.
    const slant = unwrap(cutWood(slab, [{ points: [at(300, 250), at(1900, -250)], kerf: 0 }]));
    expect(slant.map((part) => edgesOfPart(slab, part))).toEqual([
      { left: false, right: true },
      { left: true, right: false },
    ]);
  });
});

describe('lines to cut along', () => {
  it('run along the fence: what of the edge stands out furthest touches it', () => {
    // An edge that is hollow in the middle rides on its two ends.
    const hollow = outlineOf(ringOf([0, -250], [2000, -250], [2000, 250], [1000, 200], [0, 250]));
    expect(fenceLine(hollow, 'left', 100_000)).toEqual([at(0, 150), at(2000, 150)]);
    expect(fenceLine(hollow, 'right', 100_000)).toEqual([at(0, -150), at(2000, -150)]);
    // One that bulges rides on its belly and the end of the longer side about the middle.
    const tapered = outlineOf(ringOf([0, -250], [2000, -250], [2000, 250], [0, 100]));
    const [a, b] = fenceLine(tapered, 'left', 0);
    expect([a, b]).toEqual([at(0, 100), at(2000, 250)]);
  });

  it('are the middle of a marked break, from end to end', () => {
    const points = [at(900, -260), at(940, 0), at(910, 260)];
    const ring = thickLine(points, 4000) ?? [];
    const marked: Defect = { ...knot(0, 1), kind: 'break', place: { shape: 'polygon', ring } };
    expect(breakLines([marked, knot(1, 1)])).toEqual([points]);
    expect(breakLines([{ ...knot(0, 1), kind: 'break' }])).toEqual([]);
  });
});

describe('a place inside', () => {
  it('is in the wood, also of a piece with a gap in its middle', () => {
    expect(placeInside(slab)).toEqual(at(1000, 0));
    const gap = ringOf([900, -100], [1100, -100], [1100, 100], [900, 100]);
    const { y } = placeInside(outlineOf(ringOf([0, -250], [2000, -250], [2000, 250], [0, 250]), gap));
    expect(Math.abs(y)).toBeLessThanOrEqual(175_000);
  });
});
