import { describe, expect, it } from 'vitest';
import { checkDefect } from '@/shared/outline/check-defect';
import type { Defect } from '@/shared/outline/defect';
import { effectiveRegion } from '@/shared/outline/effective-region';
import { endTrims } from '@/shared/outline/end-trims';
import { mm, rectangle, ringOf } from './shapes-of-wood';

const slab = rectangle(2000, 500);
const disc = (x: number, y: number, radius: number): Defect => ({
  kind: 'knot',
  place: { shape: 'circle', centre: { x: x * 1000, y: y * 1000 }, radius: radius * 1000 },
  depth: { face: 'through' },
  decision: 'keep-out',
});
const patch = (...points: readonly (readonly [number, number])[]): Defect => ({
  ...disc(0, 0, 1),
  place: { shape: 'polygon', ring: ringOf(...points) },
});

describe('a defect marked on a slab', () => {
  it.each([
    ['in the wood', disc(500, 0, 20)],
    ['over the edge', disc(500, 260, 20)],
    ['all over the slab', patch([-10, -400], [2100, -400], [2100, 400], [-10, 400])],
    ['a patch over the end', patch([1900, -50], [2100, -50], [2100, 50])],
  ])('may lie %s', (_, defect) => {
    expect(checkDefect(slab, defect)).toEqual({ ok: true, value: defect });
  });

  it.each([
    ['beside the wood', disc(500, 270, 20), { code: 'defect-outside', point: 0 }],
    ['beyond the end', patch([2001, 0], [2100, 0], [2100, 100]), { code: 'defect-outside', point: 0 }],
    ['with crossing sides', patch([100, 0], [200, 100], [200, 0], [100, 100]), { code: 'defect-not-simple', point: 0 }],
    ['without a size', disc(500, 0, 0), { code: 'bad-radius' }],
    ['of no depth', { ...disc(500, 0, 20), depth: { face: 'A', depth: mm(0) } } as Defect, { code: 'bad-depth' }],
    ['too far off', disc(50_000, 0, 20), { code: 'out-of-range' }],
  ])('is refused %s, and kept as entered', (_, defect, fault) => {
    const made = checkDefect(slab, defect);
    expect(made).toMatchObject({ ok: false, error: { ...fault, entered: defect } });
  });
});

describe('the wood one use may be cut from', () => {
  const use = { edgeAllowance: mm(10), trims: { start: mm(50), end: mm(0) }, filling: true };
  const region = (defects: readonly Defect[], more = {}) =>
    effectiveRegion({ outline: slab, defects, endChecks: [] }, { ...use, ...more });

  it('ends at the trim, or at the checks where they run deeper', () => {
    expect(
      endTrims({ start: mm(50), end: mm(50) }, [
        { end: 'end', depth: mm(120) },
        { end: 'end', depth: mm(80) },
      ]),
    ).toEqual({
      start: mm(50),
      end: mm(120),
    });
    expect(region([])).toMatchObject({ from: 50_000, clearance: 10_000, keepOut: [] });
    expect(region([])).not.toHaveProperty('to');
  });

  it('leaves out what is kept out, and what would be filled when nothing is', () => {
    const filled = { ...disc(900, 0, 30), decision: 'fill' as const };
    const left = { ...disc(1200, 0, 30), decision: 'leave' as const };
    expect(region([disc(500, 0, 20), filled, left]).keepOut).toHaveLength(1);
    expect(region([disc(500, 0, 20), filled, left], { filling: false }).keepOut).toHaveLength(2);
  });

  it('forgets a defect that flattening its face takes away, at exactly its depth too', () => {
    const shallow: Defect = { ...disc(500, 0, 20), depth: { face: 'B', depth: mm(3) } };
    expect(region([shallow], { flattened: { A: mm(5), B: mm(2.9) } }).keepOut).toHaveLength(1);
    expect(region([shallow], { flattened: { A: mm(0), B: mm(3) } }).keepOut).toHaveLength(0);
    expect(region([disc(500, 0, 20)], { flattened: { A: mm(40), B: mm(40) } }).keepOut).toHaveLength(1);
  });

  it('takes the sapwood off as well where only heartwood is wanted', () => {
    expect(region([], { sapwood: mm(35) }).clearance).toBe(45_000);
  });
});
