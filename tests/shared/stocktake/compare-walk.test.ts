import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choicesOf } from '@/shared/stocktake/choices-of';
import { type BookThing, compareWalk, type SeenThing } from '@/shared/stocktake/compare-walk';

const HERE = 1;
const ELSEWHERE = 2;
const BEGAN = 1000;
const tin = (more: Partial<BookThing> = {}): BookThing => ({
  stockId: 7,
  kind: 'container',
  quantity: 2_500_000,
  placeId: HERE,
  changedAt: 10,
  ...more,
});
const seen = (more: Partial<SeenThing> = {}): SeenThing => ({ stockId: 7, seenAt: 2000, counted: null, ...more });
const compare = (thing: BookThing, ...sightings: SeenThing[]) =>
  compareWalk({ startedAt: BEGAN, places: new Set([HERE]), things: [thing], seen: sightings })[0];

describe('a walk compared with the book', () => {
  it('leaves what was seen where it stands alone', () => {
    expect(compare(tin(), seen())).toEqual({ stockId: 7, status: 'here', delta: 0 });
  });

  it('misses what stands there by the book and nobody saw', () => {
    expect(compare(tin())).toEqual({ stockId: 7, status: 'missing', delta: 0 });
  });

  it('says how much more or less is in it than the book has', () => {
    expect(compare(tin(), seen({ counted: 2_100_000 }))).toMatchObject({ status: 'different', delta: -400_000 });
    expect(compare(tin(), seen({ counted: 2_600_000 }))).toMatchObject({ status: 'different', delta: 100_000 });
    expect(compare(tin(), seen({ counted: 2_500_000 }))).toMatchObject({ status: 'here', delta: 0 });
  });

  it('finds what stands elsewhere by the book, or nowhere, with its weight', () => {
    expect(compare(tin({ placeId: ELSEWHERE }), seen())).toMatchObject({ status: 'extra', delta: 0 });
    expect(compare(tin({ placeId: null }), seen({ counted: 0 }))).toMatchObject({ status: 'extra', delta: -2_500_000 });
  });

  it('finds what the book has written off, unless it is as empty as the book says', () => {
    expect(compare(tin({ quantity: 0 }), seen({ counted: 300 }))).toMatchObject({ status: 'back', delta: 300 });
    expect(compare(tin({ quantity: 0 }), seen())).toMatchObject({ status: 'back', delta: 0 });
    expect(compare(tin({ quantity: 0 }), seen({ counted: 0 }))).toMatchObject({ status: 'here' });
  });

  it('never judges by a sighting what the book wrote after it', () => {
    const later = { changedAt: 3000 };
    expect(compare(tin({ ...later, placeId: ELSEWHERE }), seen())).toMatchObject({ status: 'changed' });
    expect(compare(tin(later), seen({ counted: 100 }))).toMatchObject({ status: 'changed', delta: 0 });
    expect(compare(tin({ ...later, quantity: 0 }), seen())).toMatchObject({ status: 'changed' });
    // Still where it was seen, and nothing was counted in it: taking some out of it changes nothing of that.
    expect(compare(tin(later), seen())).toMatchObject({ status: 'here' });
  });

  it('does not miss what came, or was used, after the walk began', () => {
    expect(compare(tin({ changedAt: BEGAN + 1 }))).toMatchObject({ status: 'changed' });
    expect(compare(tin({ changedAt: BEGAN }))).toMatchObject({ status: 'missing' });
  });

  it('takes a movement at the instant of the scan as before it', () => {
    expect(compare(tin({ changedAt: 2000 }), seen({ counted: 5 }))).toMatchObject({ status: 'different' });
  });

  it('has no line for what is neither expected nor seen', () => {
    expect(compare(tin({ placeId: ELSEWHERE }))).toBeUndefined();
    expect(compare(tin({ quantity: 0 }))).toBeUndefined();
  });

  it('takes a piece as whole: what is counted on it is nothing', () => {
    expect(compare(tin({ kind: 'piece', quantity: 1 }), seen({ counted: 0 }))).toMatchObject({
      status: 'here',
      delta: 0,
    });
  });

  it('says one thing of each, and posting every difference leaves the book as it was counted', () => {
    const anyThing = fc.record({
      kind: fc.constantFrom('container' as const, 'piece' as const),
      quantity: fc.integer({ min: 0, max: 5 }),
      placeId: fc.constantFrom(HERE, ELSEWHERE, null),
      changedAt: fc.integer({ min: 0, max: 3000 }),
      sighting: fc.option(fc.record({ seenAt: fc.integer({ min: 1001, max: 3000 }), counted: fc.option(fc.nat(6)) })),
    });
    fc.assert(
      fc.property(fc.array(anyThing, { maxLength: 12 }), (drawn) => {
        const things = drawn.map(({ sighting: _, ...thing }, stockId) => ({ ...thing, stockId }));
        const sightings = drawn.flatMap(({ sighting }, stockId) => (sighting ? [{ stockId, ...sighting }] : []));
        const lines = compareWalk({ startedAt: BEGAN, places: new Set([HERE]), things, seen: sightings });
        expect(new Set(lines.map((line) => line.stockId)).size).toBe(lines.length);
        for (const { stockId, status, delta } of lines) {
          const thing = things[stockId];
          const sighting = sightings.find((each) => each.stockId === stockId);
          if (!thing) throw new Error('A line of nothing.');
          if (status === 'missing') expect(sighting).toBeUndefined();
          if (['different', 'extra', 'back'].includes(status)) expect(sighting).toBeDefined();
          if (delta !== 0) expect(thing.quantity + delta).toBe(sighting?.counted);
          for (const choice of choicesOf({ status, kind: thing.kind, delta })) {
            if (choice === 'correct') expect(delta).not.toBe(0);
          }
        }
      }),
    );
  });
});

describe('what can be done about a line', () => {
  const of = (status: Parameters<typeof choicesOf>[0]['status'], more = {}) =>
    choicesOf({ status, kind: 'container', delta: 0, ...more });

  it('is to be decided only where something differs', () => {
    expect(of('here')).toEqual([]);
    expect(of('missing')).toEqual(['leave', 'gone']);
    expect(of('different', { delta: -3 })).toEqual(['correct', 'leave']);
    expect(of('extra')).toEqual(['move', 'leave']);
  });

  it('is only to leave what changed since it was seen', () => {
    expect(of('changed')).toEqual(['leave']);
  });

  it('brings a written-off tin back only with what was weighed in it, and wood never', () => {
    expect(of('back', { delta: 400 })).toEqual(['correct', 'leave']);
    expect(of('back')).toEqual(['leave']);
    expect(of('back', { kind: 'piece' })).toEqual(['leave']);
  });
});
