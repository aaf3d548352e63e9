import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { homographyFrom, straightenPixel } from '@/shared/outline/homography';
import { markErrors, placeError } from '@/shared/outline/photo-error';
import { marksOfSheet, marksOfTapes, type Pixel, SHEETS } from '@/shared/outline/sheet-marks';
import { unwrap } from '@/shared/result/result';

/** A pinhole camera above the slab's face: x right and y up on the face, y down on the photo. */
type Camera = { tilt: number; turn: number; height: number; focal: number; x: number; y: number };
function seen({ tilt, turn, height, focal, x, y }: Camera, place: { x: number; y: number }): Pixel {
  const [dx, dy] = [place.x - x, place.y - y];
  const [u, v] = [dx * Math.cos(turn) + dy * Math.sin(turn), dy * Math.cos(turn) - dx * Math.sin(turn)];
  const depth = height + v * Math.sin(tilt);
  return { x: 2000 + (focal * u) / depth, y: 1500 - (focal * v * Math.cos(tilt)) / depth };
}
const camera = fc.record({
  tilt: fc.double({ min: -0.6, max: 0.6, noNaN: true }),
  turn: fc.double({ min: -3, max: 3, noNaN: true }),
  height: fc.double({ min: 1500, max: 3000, noNaN: true }),
  focal: fc.double({ min: 2500, max: 3500, noNaN: true }),
  x: fc.double({ min: -200, max: 400, noNaN: true }),
  y: fc.double({ min: -200, max: 400, noNaN: true }),
});
type Four = readonly [Pixel, Pixel, Pixel, Pixel];
const cornersOf = (of: Camera, { width, height }: { width: number; height: number }): Four => [
  seen(of, { x: 0, y: 0 }),
  seen(of, { x: width, y: 0 }),
  seen(of, { x: width, y: height }),
  seen(of, { x: 0, y: height }),
];

describe('a photo straightened by a sheet of known size', () => {
  it('puts every place where it is, whichever way the camera stands and the corners are taken round', () => {
    const place = fc.record({ x: fc.integer({ min: -600, max: 900 }), y: fc.integer({ min: -600, max: 900 }) });
    fc.assert(
      fc.property(camera, place, fc.constantFrom('A3', 'Letter'), fc.boolean(), (of, at, name, otherWay) => {
        const sheet = SHEETS[name as keyof typeof SHEETS];
        const [a, b, c, d] = cornersOf(of, sheet);
        const marks = unwrap(otherWay ? marksOfSheet([b, a, d, c], sheet) : marksOfSheet([a, b, c, d], sheet));
        const map = unwrap(homographyFrom(marks));
        const put = straightenPixel(map, seen(of, at));
        // Taken the other way round, the sheet is seen turned by half a turn about its first side, never mirrored.
        expect(put?.x).toBeCloseTo(otherWay ? sheet.width - at.x : at.x, 4);
        expect(put?.y).toBeCloseTo(otherWay ? -at.y : at.y, 4);
        expect(Math.max(...markErrors(map, marks))).toBeLessThan(1e-6);
      }),
    );
  });

  it('puts them right by two tapes laid across one another', () => {
    const of: Camera = { tilt: 0.4, turn: 0.7, height: 2200, focal: 3000, x: 100, y: 50 };
    const ends = [
      { x: -300, y: 0 },
      { x: 700, y: 0 },
      { x: 0, y: -200 },
      { x: 0, y: 250 },
    ].map((at) => seen(of, at)) as unknown as Four;
    const marks = unwrap(
      marksOfTapes(ends, [
        { ends: [100, 1100], crossing: 400 },
        { ends: [0, 450], crossing: 200 },
      ]),
    );
    const put = straightenPixel(unwrap(homographyFrom(marks)), seen(of, { x: 520, y: -160 }));
    expect(put?.x).toBeCloseTo(520, 6);
    expect(put?.y).toBeCloseTo(-160, 6);
  });

  it('fits more than four marks and says how far each is off', () => {
    const of: Camera = { tilt: 0.3, turn: 0, height: 2000, focal: 3000, x: 0, y: 0 };
    const places = [0, 200, 400].flatMap((x) => [0, 150, 300].map((y) => ({ x, y })));
    const marks = places.map((place) => ({ place, pixel: seen(of, place) }));
    const exact = unwrap(homographyFrom(marks));
    expect(Math.max(...markErrors(exact, marks))).toBeLessThan(1e-4);
    const moved = marks.map((mark, nr) =>
      nr === 4 ? { ...mark, pixel: { x: mark.pixel.x + 9, y: mark.pixel.y } } : mark,
    );
    const errors = markErrors(unwrap(homographyFrom(moved)), moved);
    expect(errors.indexOf(Math.max(...errors))).toBe(4);
  });

  it('says how far off a place may be: little at the sheet, more away from it, and in proportion to the tapping', () => {
    const of: Camera = { tilt: 0.4, turn: 0.2, height: 2500, focal: 3000, x: 0, y: 0 };
    const marks = unwrap(marksOfSheet(cornersOf(of, SHEETS.A3), SHEETS.A3));
    const atSheet = placeError(marks, seen(of, { x: 150, y: 200 }));
    const away = placeError(marks, seen(of, { x: 1200, y: 200 }));
    expect(atSheet).toBeGreaterThan(0.5);
    expect(atSheet).toBeLessThan(5);
    expect(away).toBeGreaterThan(3 * atSheet);
    expect(placeError(marks, seen(of, { x: 150, y: 200 }), 4) / atSheet).toBeCloseTo(2, 1);
  });
});

describe('four corners that cannot be a sheet', () => {
  const [a, b, c, d] = [
    { x: 0, y: 0 },
    { x: 100, y: 5 },
    { x: 95, y: 140 },
    { x: -4, y: 130 },
  ] as const;
  it.each([
    ['a bow-tie', [a, b, d, c], 'bow-tie'],
    ['the other bow-tie', [a, c, b, d], 'bow-tie'],
    ['three in a line', [a, b, { x: 200, y: 10 }, d], 'corners-in-line'],
    ['one corner twice', [a, b, b, d], 'corners-in-line'],
    ['a dent', [a, b, { x: 30, y: 40 }, d], 'corner-dented'],
  ] as const)('%s is refused and kept', (_, corners, code) => {
    expect(marksOfSheet(corners, SHEETS.A3)).toMatchObject({ ok: false, error: { code, entered: corners } });
  });

  it('names the dented corner', () => {
    expect(marksOfSheet([a, b, { x: 30, y: 40 }, d], SHEETS.A3)).toMatchObject({ error: { corner: 2 } });
  });

  it('refuses a sheet without size, and tapes that do not cross', () => {
    expect(marksOfSheet([a, b, c, d], { width: 0, height: 10 })).toMatchObject({ error: { code: 'bad-size' } });
    const tapes = [
      { ends: [0, 100], crossing: 50 },
      { ends: [0, 100], crossing: 120 },
    ] as const;
    expect(marksOfTapes([a, c, b, d], tapes)).toMatchObject({ error: { code: 'bad-size', corner: 2 } });
    const crossed = [tapes[0], { ends: [0, 100], crossing: 20 }] as const;
    expect(marksOfTapes([a, b, c, d], crossed)).toMatchObject({ error: { code: 'bow-tie' } });
  });

  it('three marks fix nothing', () => {
    const marks = unwrap(marksOfSheet([a, b, c, d], SHEETS.A3));
    expect(homographyFrom(marks.slice(0, 3))).toEqual({ ok: false, error: { code: 'too-few-marks' } });
    const first = marks[0];
    if (first)
      expect(homographyFrom([first, first, first, first])).toEqual({ ok: false, error: { code: 'marks-in-line' } });
  });
});
