import { describe, expect, it } from 'vitest';
import { doubtfulStation } from '@/shared/outline/doubtful-station';
import { outlineArea } from '@/shared/outline/outline-area';
import { outlineFromStations } from '@/shared/outline/outline-from-stations';
import { usableWidths } from '@/shared/outline/usable-widths';
import { widthAt } from '@/shared/outline/width-at';
import { unwrap } from '@/shared/result/result';
import { line, mm, outlineOf, ringOf } from './shapes-of-wood';

describe('an outline from stations down a chalk line', () => {
  it('joins the stations by straight edges, counter-clockwise', () => {
    const outline = unwrap(outlineFromStations(line([0, 100, 150], [1000, 120, 180], [2000, 90, 160])));
    expect(outline.ring).toEqual(ringOf([0, -150], [1000, -180], [2000, -160], [2000, 90], [1000, 120], [0, 100]));
    expect(outlineArea(outline)).toBeCloseTo((250 + 300) * 500 + (300 + 250) * 500, 6);
  });

  it('reads sixty-fourths of an inch to within half a micrometre', () => {
    const sixtyFourth = mm(25.4 / 64);
    const outline = unwrap(outlineFromStations(line([0, 25.4 / 64, 0], [1000, 10, 10])));
    expect(Math.abs((outline.ring.at(-1)?.y ?? 0) - sixtyFourth / 1000)).toBeLessThanOrEqual(0.5);
  });

  it('lets the chalk line leave the wood of a bowed slab', () => {
    const outline = unwrap(outlineFromStations(line([0, 100, 100], [1000, 300, -100], [2000, 100, 100])));
    expect(widthAt(outline, 1_000_000)).toBe(200_000);
    expect(outlineArea(outline)).toBe(400_000);
  });

  it('lets both ends come to a point', () => {
    const outline = unwrap(outlineFromStations(line([0, 0, 0], [1000, 100, 100], [2000, 0, 0])));
    expect(outline.ring).toHaveLength(4);
    expect(outlineArea(outline)).toBe(200_000);
  });

  it('takes two stations at one distance as a step', () => {
    const outline = unwrap(
      outlineFromStations(line([0, 100, 100], [1000, 100, 100], [1000, 50, 100], [2000, 50, 100])),
    );
    expect(outlineArea(outline)).toBe(350_000);
    expect(usableWidths(outline)).toMatchObject({
      narrowest: { width: 150_000, at: 1_000_000 },
      widest: { width: 200_000 },
    });
  });

  it('cuts a hole for a gap in the middle and opens a crotch for one that reaches the end', () => {
    const slab = line([0, 200, 200], [2000, 200, 200]);
    const hole = { stations: line([500, 0, 0], [700, 50, 50], [900, 0, 0]).stations };
    const crotch = { stations: line([1500, 0, 0], [2000, 60, 60]).stations };
    const outline = unwrap(outlineFromStations({ ...slab, gaps: [hole, crotch] }));
    expect(outline.holes).toHaveLength(1);
    expect(outline.ring).toHaveLength(7);
    expect(outlineArea(outline)).toBe(800_000 - 20_000 - 30_000);
    expect(widthAt(outline, 2_000_000)).toBe(140_000);
    expect(widthAt(outline, 700_000)).toBe(150_000);
  });

  it('opens a crotch at the beginning as well as at the end', () => {
    const slab = line([0, 200, 200], [2000, 200, 200]);
    const gaps = [
      { stations: line([0, 120, -80], [300, 100, -100]).stations },
      { stations: line([0, -80, 120], [300, -100, 100]).stations },
    ];
    const outline = unwrap(outlineFromStations({ ...slab, gaps }));
    expect(outline.holes).toHaveLength(0);
    expect(outlineArea(outline)).toBe(800_000 - 2 * 20 * 300);
  });
});

describe('what is refused, naming the value and keeping what was entered', () => {
  const good = [
    [0, 100, 100],
    [1000, 100, 100],
  ] as const;
  it.each([
    ['one station', line([0, 100, 100]), { code: 'too-few-stations', station: 0, value: 'at' }],
    [
      'a station out of order',
      line(...good, [900, 100, 100]),
      { code: 'station-out-of-order', station: 2, value: 'at' },
    ],
    ['a station entered twice', line(...good, [1000, 100, 100]), { code: 'station-repeated', station: 2, value: 'at' }],
    ['a step at the end', line(...good, [1000, 80, 100]), { code: 'station-repeated', station: 2, value: 'at' }],
    [
      'edges that cross',
      line([0, 100, 100], [500, -150, 100], [1000, 100, 100]),
      { code: 'edges-cross', station: 1, value: 'left' },
    ],
    [
      'edges that meet',
      line([0, 100, 100], [500, 100, -100], [1000, 100, 100]),
      { code: 'no-wood-here', station: 1, value: 'right' },
    ],
    [
      'a step whose two parts do not meet',
      line([0, 100, -50], [500, 100, -50], [500, 40, 60], [1000, 40, 60]),
      { code: 'edges-cross', station: 2, value: 'left' },
    ],
    [
      'a distance beyond 20 m',
      line([0, 100, 100], [20_001, 100, 100]),
      { code: 'out-of-range', station: 1, value: 'right' },
    ],
    [
      'a gap beyond the end',
      { ...line(...good), gaps: [{ stations: line([900, 10, 10], [1100, 10, 10]).stations }] },
      { code: 'gap-outside', gap: 0, station: 1, value: 'at' },
    ],
    [
      'a gap across an edge',
      { ...line(...good), gaps: [{ stations: line([400, 10, 10], [500, 120, 10], [600, 10, 10]).stations }] },
      { code: 'gap-outside', gap: 0 },
    ],
    [
      'a gap out of order',
      { ...line(...good), gaps: [{ stations: line([400, 10, 10], [300, 10, 10]).stations }] },
      { code: 'station-out-of-order', gap: 0, station: 1 },
    ],
  ])('%s', (_, entered, fault) => {
    expect(outlineFromStations(entered)).toMatchObject({ ok: false, error: fault });
    const made = outlineFromStations(entered);
    expect(made.ok ? undefined : made.error.entered).toBe(entered);
  });

  it('a chalk line is not blamed for what tapping alone can do wrong', () => {
    expect(() => outlineOf(ringOf([0, 0], [4, 4], [4, 0], [0, 4]))).toThrow('sides-cross');
  });
});

describe('a value that looks like a slip', () => {
  it('is the one far from the line through its neighbours', () => {
    expect(doubtfulStation(line([0, 250, 250], [500, 260, 260], [1000, 26, 250], [1500, 255, 255]).stations)).toEqual({
      station: 2,
      value: 'left',
    });
    expect(doubtfulStation(line([0, 250, 250], [500, 260, 260], [1000, 26, 26], [1500, 255, 255]).stations)).toEqual({
      station: 2,
      value: 'left',
    });
    expect(doubtfulStation(line([0, 250, 250], [500, 260, 2600], [1000, 255, 250]).stations)).toEqual({
      station: 1,
      value: 'right',
    });
  });

  it('is none where a straight line wanders across a bowed slab, or runs close to one edge', () => {
    expect(doubtfulStation(line([0, 100, 100], [1000, 300, -100], [2000, 100, 100]).stations)).toBeUndefined();
    expect(doubtfulStation(line([0, 30, 500], [1000, 100, 510], [2000, 35, 500]).stations)).toBeUndefined();
  });

  it('is none on a slab that tapers or bulges', () => {
    expect(
      doubtfulStation(line([0, 250, 250], [1000, 220, 220], [2000, 180, 200], [3000, 260, 300]).stations),
    ).toBeUndefined();
  });
});
