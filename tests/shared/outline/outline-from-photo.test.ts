import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { straightenPixel } from '@/shared/outline/homography';
import { invertHomography } from '@/shared/outline/invert-homography';
import { longAxis } from '@/shared/outline/long-axis';
import { outlineArea } from '@/shared/outline/outline-area';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { type FourPixels, outlineFromPhoto, type PhotoMeasuring } from '@/shared/outline/outline-from-photo';
import { photoDoubt } from '@/shared/outline/photo-doubt';
import { twiceRingArea } from '@/shared/outline/ring-area';
import { sayMiss } from '@/shared/outline/say-miss';
import { sayPhotoFault } from '@/shared/outline/say-photo-fault';
import { SHEETS } from '@/shared/outline/sheet-marks';
import { unwrap } from '@/shared/result/result';
import { type Camera, PHONE_CAMERA, SLAB, seenBy } from '@/tests/support/slab-photo';

const A3_LYING = { kind: 'sheet', width: 420, height: 297 } as const;
const tapped = (camera: Camera, more: Partial<PhotoMeasuring> = {}): PhotoMeasuring => ({
  reference: A3_LYING,
  marks: SLAB.sheet.map((place) => seenBy(camera, place)) as unknown as FourPixels,
  edge: SLAB.edge.map((place) => seenBy(camera, place)),
  gaps: [SLAB.gap.map((place) => seenBy(camera, place))],
  fromOtherEnd: false,
  ...more,
});
const areaOf = (ring: readonly { x: number; y: number }[]) =>
  Math.abs(Number(twiceRingArea(ring.map(({ x, y }) => ({ x: x * 1000, y: y * 1000 }))))) / 2e6;
const AREA = areaOf(SLAB.edge) - areaOf(SLAB.gap);

describe('the outline of a slab seen by a known camera', () => {
  it('comes out as it is to a hundredth of a millimetre where every tap is true, whichever way the camera stands', () => {
    const camera = fc.record({
      tilt: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
      turn: fc.double({ min: -3.1, max: 3.1, noNaN: true }),
      height: fc.double({ min: 1800, max: 3500, noNaN: true }),
      focal: fc.constant(3000),
      x: fc.double({ min: 600, max: 1200, noNaN: true }),
      y: fc.double({ min: -500, max: 500, noNaN: true }),
      width: fc.constant(4000),
      down: fc.constant(3000),
    });
    fc.assert(
      fc.property(camera, fc.boolean(), (of, fromOtherEnd) => {
        const { outline } = unwrap(outlineFromPhoto(tapped(of, { fromOtherEnd })));
        expect(outline.holes).toHaveLength(1);
        expect(Math.abs(outlineArea(outline) - AREA)).toBeLessThan(AREA * 1e-4);
        expect(boundsOf(outline.ring).left).toBe(0);
        for (const [nr, from] of SLAB.edge.entries()) {
          const to = SLAB.edge[(nr + 1) % SLAB.edge.length] ?? from;
          const [a, b] = [outline.ring[nr], outline.ring[(nr + 1) % SLAB.edge.length]];
          const side = Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0)) / 1000;
          expect(Math.abs(side - Math.hypot(from.x - to.x, from.y - to.y))).toBeLessThan(0.01);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('is as far off as is said, at the most, where taps miss by up to two pixels', () => {
    let seed = 7;
    const miss = () => {
      seed = (seed * 16_807) % 2_147_483_647;
      return (seed / 2_147_483_647 - 0.5) * 4;
    };
    const missed = (pixels: readonly { x: number; y: number }[]) =>
      pixels.map(({ x, y }) => ({ x: x + miss(), y: y + miss() }));
    const exact = tapped(PHONE_CAMERA);
    const { marks, outline } = unwrap(outlineFromPhoto(exact));
    const doubt = photoDoubt(marks, exact.edge);
    const length = boundsOf(outline.ring).right / 1000;
    for (let times = 0; times < 40; times += 1) {
      const shaken = { ...exact, marks: missed(exact.marks) as unknown as FourPixels, edge: missed(exact.edge) };
      const { right } = boundsOf(unwrap(outlineFromPhoto(shaken)).outline.ring);
      expect(Math.abs(right / 1000 - length)).toBeLessThan(2 * doubt.most);
    }
    expect(doubt.atMarks).toBeLessThan(4);
    expect(doubt.most).toBeGreaterThan(doubt.atMarks);
    // The slab's far end, not a place beside the sheet.
    const worst = SLAB.edge[doubt.point];
    expect(Math.abs((worst?.x ?? 900) - 910)).toBeGreaterThan(600);
  });

  it('begins at the left of the photo, or at its bottom, and at the other end when it is told so; left stays left', () => {
    const level = { ...PHONE_CAMERA, tilt: 0, turn: 0 };
    const first = (of: Camera, fromOtherEnd: boolean) => {
      const { map } = unwrap(outlineFromPhoto(tapped(of, { fromOtherEnd })));
      return straightenPixel(map, seenBy(of, { x: 0, y: 0 }))?.x ?? Number.NaN;
    };
    expect(first(level, false)).toBeLessThan(10);
    expect(first(level, true)).toBeGreaterThan(1790);
    // By a quarter turn of the camera the slab's x = 0 is at the top of the photo, or at its bottom.
    expect(first({ ...level, turn: Math.PI / 2, y: 0 }, false)).toBeGreaterThan(1790);
    expect(first({ ...level, turn: -Math.PI / 2, y: 0 }, false)).toBeLessThan(10);
    const { map } = unwrap(outlineFromPhoto(tapped(level)));
    expect(straightenPixel(map, seenBy(level, { x: 900, y: 200 }))?.y).toBeGreaterThan(100);
    const { map: turned } = unwrap(outlineFromPhoto(tapped(level, { fromOtherEnd: true })));
    expect(straightenPixel(turned, seenBy(level, { x: 900, y: 200 }))?.y).toBeLessThan(-100);
  });

  it('is the same by two tapes as by a sheet, whichever way the second tape reads', () => {
    const ends = [
      { x: 200, y: 0 },
      { x: 1600, y: 0 },
      { x: 700, y: -200 },
      { x: 700, y: 250 },
    ];
    const by = (turned: boolean) => {
      const places = turned ? [ends[0], ends[1], ends[3], ends[2]] : ends;
      const across = turned ? { ends: [0, 450], crossing: 250 } : { ends: [0, 450], crossing: 200 };
      return unwrap(
        outlineFromPhoto(
          tapped(PHONE_CAMERA, {
            reference: { kind: 'tapes', tapes: [{ ends: [0, 1400], crossing: 500 }, across] } as never,
            marks: places.map((place) => seenBy(PHONE_CAMERA, place ?? { x: 0, y: 0 })) as unknown as FourPixels,
          }),
        ),
      ).outline;
    };
    const sheet = unwrap(outlineFromPhoto(tapped(PHONE_CAMERA))).outline;
    for (const outline of [by(false), by(true)])
      for (const [nr, point] of sheet.ring.entries()) {
        expect(Math.abs((outline.ring[nr]?.x ?? 0) - point.x)).toBeLessThan(10);
        expect(Math.abs((outline.ring[nr]?.y ?? 0) - point.y)).toBeLessThan(10);
      }
  });

  it('goes back to the pixel it came from', () => {
    const { map } = unwrap(outlineFromPhoto(tapped(PHONE_CAMERA)));
    const there = straightenPixel(map, { x: 1234, y: 987 });
    const back = there && straightenPixel(invertHomography(map), there);
    expect(back?.x).toBeCloseTo(1234, 6);
    expect(back?.y).toBeCloseTo(987, 6);
  });
});

describe('what was tapped wrongly is refused with the point to look at', () => {
  const exact = tapped(PHONE_CAMERA);
  const fault = (more: Partial<PhotoMeasuring>) => {
    const made = outlineFromPhoto({ ...exact, ...more });
    if (made.ok) throw new Error('It was not refused.');
    const { says, toDo } = sayPhotoFault(made.error.code);
    expect(says.length).toBeGreaterThan(10);
    expect(toDo.length).toBeGreaterThan(10);
    return made.error;
  };
  it('a bow-tie of corners', () => {
    const [a, b, c, d] = exact.marks;
    expect(fault({ marks: [a, b, d, c] })).toMatchObject({ code: 'bow-tie', mark: 2 });
  });
  it('corners in one line', () => {
    const [a, b, , d] = exact.marks;
    const between = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    expect(fault({ marks: [a, between, b, d] })).toMatchObject({ code: 'corners-in-line', mark: 1 });
  });
  it('an edge that crosses itself', () => {
    const edge = [...exact.edge];
    [edge[3], edge[4]] = [edge[4] ?? { x: 0, y: 0 }, edge[3] ?? { x: 0, y: 0 }];
    expect(fault({ edge, gaps: [] })).toMatchObject({ code: 'sides-cross' });
  });
  it('fewer than three points, or all on one line', () => {
    expect(fault({ edge: exact.edge.slice(0, 2) })).toEqual({ code: 'too-few-points', point: 1 });
    const [a, b] = [seenBy(PHONE_CAMERA, { x: 0, y: 0 }), seenBy(PHONE_CAMERA, { x: 800, y: 0 })];
    const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    expect(['no-area', 'sides-cross']).toContain(fault({ edge: [a, middle, b], gaps: [] }).code);
  });
  it('a gap that is not on the wood', () => {
    const gap = SLAB.gap.map(({ x, y }) => seenBy(PHONE_CAMERA, { x, y: y + 700 }));
    expect(fault({ gaps: [gap] })).toEqual({ code: 'gap-outside', gap: 0, point: 0 });
  });
  it('a point beyond the horizon of a flat photo', () => {
    const flat = { ...PHONE_CAMERA, tilt: 1.2 };
    const edge = [...tapped(flat).edge, { x: 2000, y: -40_000 }];
    expect(fault({ marks: tapped(flat).marks, edge, gaps: [] })).toMatchObject({ code: 'beyond-horizon', point: 26 });
  });
});

describe('the way a slab runs', () => {
  it('is along the longer side of the smallest box, at any slant', () => {
    fc.assert(
      fc.property(fc.double({ min: -3, max: 3, noNaN: true }), (turn) => {
        const put = (x: number, y: number) => ({
          x: 50 + x * Math.cos(turn) - y * Math.sin(turn),
          y: -20 + x * Math.sin(turn) + y * Math.cos(turn),
        });
        const { along, middle } = unwrap(longAxis([put(0, 0), put(400, 0), put(400, 100), put(180, 60), put(0, 100)]));
        expect(Math.abs(along.x * Math.cos(turn) + along.y * Math.sin(turn))).toBeCloseTo(1, 9);
        expect(middle.x).toBeCloseTo(put(200, 50).x, 6);
        expect(middle.y).toBeCloseTo(put(200, 50).y, 6);
      }),
    );
  });
});

describe('how far off something may be', () => {
  it('is rounded up, never to nothing', () => {
    expect([0, 1.2, 2].map((mm) => sayMiss(mm, 'metric'))).toEqual(['1 mm', '2 mm', '2 mm']);
    expect([0, 1.2, 1.6].map((mm) => sayMiss(mm, 'imperial'))).toEqual(['1/16"', '1/16"', '1/8"']);
    expect(sayMiss(Number.POSITIVE_INFINITY, 'metric')).toBe('more than can be said');
  });
});

// ISO 216:2007, table 1: A3 297 × 420, A4 210 × 297 mm. ANSI/ASME Y14.1: A 8.5 × 11 in, B 11 × 17 in. From memory.
describe('sheets of known size', () => {
  it.each([
    ['A3', 297, 420],
    ['A4', 210, 297],
    ['Letter', 8.5 * 25.4, 11 * 25.4],
    ['Tabloid', 11 * 25.4, 17 * 25.4],
  ] as const)('%s', (name, width, height) => {
    expect(SHEETS[name].width).toBeCloseTo(width, 9);
    expect(SHEETS[name].height).toBeCloseTo(height, 9);
  });
});
