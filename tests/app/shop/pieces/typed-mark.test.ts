import { describe, expect, it } from 'vitest';
import { readPoints } from '@/app/(shop)/pieces/[label]/marks/read-points';
import { NEW_MARK, readMark, type TypedMark } from '@/app/(shop)/pieces/[label]/marks/typed-mark';
import { writePoint } from '@/app/(shop)/pieces/[label]/marks/write-point';
import { outlineFromPoints } from '@/shared/outline/outline-from-points';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';

const um = (mm: number) => Math.round(mm * 1000);
const at = (x: number, y: number) => ({ x: um(x), y: um(y) });
/** 2 m by 600 mm, 300 to either side of the line. */
const SLAB = unwrap(outlineFromPoints({ edge: [at(0, -300), at(2000, -300), at(2000, 300), at(0, 300)] }));
const read = (more: Partial<TypedMark>, strict = true) => readMark({ ...NEW_MARK, ...more }, SLAB, 'metric', strict);

describe('a mark as it is typed', () => {
  it('round, from its middle and its size across', () => {
    expect(read({ points: '900; 85', size: '80' }).mark).toEqual({
      is: 'defect',
      kind: 'knot',
      place: { shape: 'circle', centre: at(900, 85), radius: um(40) },
      depth: { face: 'through' },
      decision: 'keep-out',
      note: '',
    });
  });

  it('a crack, from the points along it and its width', () => {
    const { mark } = read({ kind: 'break', shape: 'line', points: '500, -300\n520, 300', size: '4 mm' });
    expect(mark?.is === 'defect' && mark.place.shape === 'polygon' && mark.place.ring).toHaveLength(4);
  });

  it('from one face, with its depth, and not without', () => {
    const bark = { kind: 'bark inclusion', points: '900; 0', size: '60', face: 'B' } as const;
    expect(read({ ...bark, depth: '12' }).mark).toMatchObject({ depth: { face: 'B', depth: nanometres(12_000_000) } });
    expect(read(bark).problems).toEqual({ depth: 'Give how deep it goes.' });
  });

  it('an end check, a strap straight across, and a strap on a slant', () => {
    expect(read({ kind: 'end check', end: 'end', depth: '150' }).mark).toMatchObject({ is: 'end-check', end: 'end' });
    expect(read({ kind: 'strap', points: '400; 20' }).mark).toMatchObject({ from: at(400, -300), to: at(400, 300) });
    const slant = read({ kind: 'strap', points: '400; 200\n450; -200' }).mark;
    expect(slant).toMatchObject({ from: at(450, -300), to: at(400, 300) });
  });

  it('that lies off the wood, crosses itself or is longer than the piece is refused beside its field', () => {
    expect(read({ points: '3000; 0', size: '80' }).problems.points).toBe('None of it lies on the wood.');
    const bowTie = '100; 100\n300; 200\n300; 100\n100; 200';
    expect(read({ shape: 'outline', points: bowTie }).problems.points).toMatch(/crosses itself after point/);
    expect(read({ kind: 'end check', depth: '2000' }).problems.depth).toBe('That is longer than the piece.');
    expect(read({ kind: 'strap', points: '2500; 0' }).problems.points).toBe('There is no wood there.');
    expect(read({ points: 'here', size: '80' }).problems.points).toMatch(/Line 1 is no point/);
  });

  it('asks for nothing until it is sent', () => {
    expect(read({}, false)).toEqual({ problems: {} });
    expect(Object.keys(read({}).problems)).toEqual(['size', 'points']);
  });

  it.each(['metric', 'imperial'] as const)('tapped, reads back as it was written (%s)', (prefer) => {
    for (const point of [at(933, 99), at(0, 0), at(1234, -45), at(1999, -300)]) {
      const back = readPoints(writePoint(point, prefer), prefer);
      const step = prefer === 'metric' ? 500 : 25_400 / 32;
      expect(back.ok && back.points).toHaveLength(1);
      if (!back.ok || !back.points[0]) continue;
      expect(Math.abs(back.points[0].x - point.x)).toBeLessThanOrEqual(step + 1);
      expect(Math.abs(back.points[0].y - point.y)).toBeLessThanOrEqual(step + 1);
    }
  });
});
