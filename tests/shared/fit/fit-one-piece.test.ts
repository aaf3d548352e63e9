import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitOnePiece } from '@/shared/fit/fit-one-piece';
import { type FitRequest, readRequest, regionFor, type SlabToSearch } from '@/shared/fit/fit-request';
import { fitSlabs } from '@/shared/fit/fit-slabs';
import { holdsShape } from '@/shared/fit/holds-shape';
import type { TopShape } from '@/shared/fit/top-shape';
import type { Ring } from '@/shared/outline/outline';
import { outlineFromPoints } from '@/shared/outline/outline-from-points';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { mm, numbersFrom, randomSlab } from './random-slab';

const slabOf = (edge: Ring, more: Partial<SlabToSearch> = {}): SlabToSearch => ({
  id: 'slab',
  outline: unwrap(outlineFromPoints({ edge })),
  defects: [],
  endChecks: [],
  ...more,
});
const board = (long: number, wide: number, more: Partial<SlabToSearch> = {}) =>
  slabOf(
    [
      [0, -wide / 2],
      [long, -wide / 2],
      [long, wide / 2],
      [0, wide / 2],
    ].map(([x = 0, y = 0]) => ({ x: Math.round(x * 1000), y: Math.round(y * 1000) })),
    more,
  );
const asked = (shape: TopShape, more: Partial<FitRequest> = {}): FitRequest => ({
  shape,
  grainWindow: 5,
  edgeAllowance: mm(0),
  trims: { start: mm(0), end: mm(0) },
  filling: true,
  ...more,
});
const ask = (slab: SlabToSearch, shape: TopShape, more: Partial<FitRequest> = {}) =>
  fitOnePiece(slab, unwrap(readRequest(asked(shape, more))));
const rectangle = (length: number, width: number, cornerRadius = 0): TopShape => ({
  kind: 'rectangle',
  length: mm(length),
  width: mm(width),
  cornerRadius: mm(cornerRadius),
});
const INCH = 25.4;

describe('a top from a board of its own size', () => {
  it.each([
    rectangle(1000, 500),
    rectangle(1000, 500, 100),
    rectangle(1000, 500, 250),
    { kind: 'oval', length: mm(999.95), width: mm(499.95) },
  ] as const)('fits, be it %o', (shape) => {
    expect(ask(board(1000, 500), shape).answer).toBe('yes');
  });

  it('does not fit when it is a tenth of a millimetre larger, and is called nearly', () => {
    const fit = ask(board(1000, 500), rectangle(1000.1, 500));
    expect(fit).toMatchObject({ answer: 'nearly', missing: { tooShort: { by: mm(1) } } });
    expect(ask(board(1000, 500), rectangle(1000, 500.1))).toMatchObject({
      answer: 'nearly',
      missing: { tooNarrow: { by: mm(1) } },
    });
  });

  it('says what is missing of one twelve millimetres too narrow and thirty too short', () => {
    expect(ask(board(1000, 500), rectangle(900, 512))).toMatchObject({
      answer: 'nearly',
      missing: { tooNarrow: { by: mm(12), width: mm(500), length: mm(900) } },
    });
    expect(ask(board(1000, 500), rectangle(1030, 400), { grainWindow: 0 })).toMatchObject({
      answer: 'nearly',
      missing: { tooShort: { by: mm(30), length: mm(1000) }, largest: { length: mm(1000) } },
    });
  });

  it('is no, with proof, where even a part of it does not fit', () => {
    expect(ask(board(1000, 500), rectangle(1300, 650))).toMatchObject({ answer: 'no', proof: { tolerance: mm(1) } });
  });

  it('a round takes the width whatever the grain window', () => {
    expect(ask(board(1000, 500), { kind: 'round', diameter: mm(499.9) }).answer).toBe('yes');
    expect(ask(board(1000, 500), { kind: 'round', diameter: mm(501) }).answer).toBe('nearly');
  });
});

describe('a dining top of 84 by 40 inches with large corners (common practice)', () => {
  const top = rectangle(84 * INCH, 40 * INCH, 10 * INCH);
  // Both ends of this slab are clipped where the corners of a square top would be.
  const clipped = (clip: number) => {
    const [long, wide] = [86 * INCH, 42 * INCH];
    return slabOf(
      [
        [clip, -wide / 2],
        [long - clip, -wide / 2],
        [long, -wide / 2 + clip],
        [long, wide / 2 - clip],
        [long - clip, wide / 2],
        [clip, wide / 2],
        [0, wide / 2 - clip],
        [0, -wide / 2 + clip],
      ].map(([x = 0, y = 0]) => ({ x: Math.round(x * 1000), y: Math.round(y * 1000) })),
    );
  };

  it('fits where the wood is missing at its corners, and the square-cornered top does not', () => {
    // In from the slab's corner by (2 − √2) r + 2 in along both sides' sum the rounded corner begins.
    const room = ((2 - Math.SQRT2) * 10 + 2) * INCH;
    expect(ask(clipped(room - 2), top, { grainWindow: 0 }).answer).toBe('yes');
    expect(ask(clipped(room + 3), top, { grainWindow: 0 }).answer).toBe('nearly');
    expect(ask(clipped(room - 2), rectangle(84 * INCH, 40 * INCH), { grainWindow: 0 }).answer).toBe('nearly');
  });

  it('keeps an inch off every edge when asked to, and no more', () => {
    const answer = (inches: number) =>
      ask(clipped(10), top, { edgeAllowance: nanometres(Math.round(inches * 25_400_000)) }).answer;
    expect(answer(1)).toBe('yes');
    expect(answer(1.05)).toBe('nearly');
  });
});

describe('a top lying askew in wood that hugs it', () => {
  /** The outline that hugs a rectangle with `slack` all round, turned by an angle that no regular sampling meets. */
  const hugging = (slack: number, angle: number) => {
    const [a, b] = [400 + slack, 150 + slack];
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    return slabOf(
      [
        [-a, -b],
        [a, -b],
        [a, b],
        [-a, b],
      ].map(([x = 0, y = 0]) => ({ x: Math.round(1000 * (x * c - y * s)), y: Math.round(1000 * (x * s + y * c)) })),
    );
  };

  it('is found at any angle of the window, with a millimetre to spare', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.25, max: 0.25, noNaN: true }), (angle) => {
        const fit = ask(hugging(1.01, angle), rectangle(800, 300), { grainWindow: 15, nearlyFrom: 1 });
        expect(fit.answer).toBe('yes');
      }),
      { numRuns: 60 },
    );
  });

  it('is never found when the wood is smaller than it', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.25, max: 0.25, noNaN: true }), (angle) => {
        expect(ask(hugging(-0.05, angle), rectangle(800, 300), { grainWindow: 15, nearlyFrom: 1 }).answer).toBe('no');
      }),
      { numRuns: 20 },
    );
  });

  it('is not found beyond the window', () => {
    const angle = (7 * Math.PI) / 180;
    expect(ask(hugging(1.5, angle), rectangle(800, 300), { grainWindow: 6, nearlyFrom: 1 }).answer).toBe('no');
    expect(ask(hugging(1.5, angle), rectangle(800, 300), { grainWindow: 7, nearlyFrom: 1 }).answer).toBe('yes');
  });
});

describe('what is kept out of a top', () => {
  const knot = (x: number, y: number, radius: number, decision: 'keep-out' | 'fill') => ({
    kind: 'knot' as const,
    place: { shape: 'circle' as const, centre: { x: x * 1000, y: y * 1000 }, radius: radius * 1000 },
    depth: { face: 'through' as const },
    decision,
  });

  it('a knot in the middle leaves room at one side of it only', () => {
    const slab = board(1000, 500, { defects: [knot(500, 0, 20, 'keep-out')] });
    expect(ask(slab, rectangle(475, 480), { grainWindow: 0 }).answer).toBe('yes');
    expect(ask(slab, rectangle(485, 480), { grainWindow: 0, nearlyFrom: 1 }).answer).toBe('no');
    expect(ask(slab, rectangle(900, 229), { grainWindow: 0 }).answer).toBe('yes');
    expect(ask(slab, rectangle(900, 232), { grainWindow: 0, nearlyFrom: 1 }).answer).toBe('no');
  });

  it('one to be filled may be in the top, unless nothing is filled', () => {
    const slab = board(1000, 500, { defects: [knot(500, 0, 20, 'fill')] });
    expect(ask(slab, rectangle(900, 480)).answer).toBe('yes');
    expect(ask(slab, rectangle(900, 480), { filling: false, nearlyFrom: 1 }).answer).toBe('no');
  });

  it('two knots that overlap are both kept out', () => {
    const slab = board(1000, 500, { defects: [knot(500, 0, 60, 'keep-out'), knot(520, 0, 60, 'keep-out')] });
    expect(ask(slab, rectangle(20, 20), { grainWindow: 0 }).answer).toBe('yes');
    const fit = ask(slab, rectangle(430, 480), { grainWindow: 0 });
    expect(fit).toMatchObject({ answer: 'yes' });
    expect(ask(slab, rectangle(445, 480), { grainWindow: 0, nearlyFrom: 1 }).answer).toBe('no');
  });

  it('trims and end checks come off the ends, and the edge allowance does not come off a sawn end', () => {
    const slab = board(1000, 500, { endChecks: [{ end: 'start', depth: mm(80) }] });
    const more = { trims: { start: mm(20), end: mm(20) }, edgeAllowance: mm(10), grainWindow: 0 };
    expect(ask(slab, rectangle(900, 480), more).answer).toBe('yes');
    expect(ask(slab, rectangle(902, 480), more)).toMatchObject({
      answer: 'nearly',
      missing: { tooShort: { by: mm(2) } },
    });
  });

  it('a top may not lie in a gap or beyond the edge', () => {
    const outline = unwrap(
      outlineFromPoints({
        edge: board(1000, 500).outline.ring,
        gaps: [
          [
            { x: 100_000, y: -200_000 },
            { x: 900_000, y: -200_000 },
            { x: 900_000, y: 200_000 },
            { x: 100_000, y: 200_000 },
          ],
        ],
      }),
    );
    expect(ask(board(1000, 500, { outline }), rectangle(300, 300), { nearlyFrom: 1 }).answer).toBe('no');
    expect(ask(board(1000, 500, { outline }), rectangle(900, 49), { nearlyFrom: 1 }).answer).toBe('yes');
  });
});

describe('the best place', () => {
  it('lies at one end, to keep the offcut in one piece, with the figure down its middle', () => {
    const fit = ask(board(3000, 900), rectangle(1500, 600));
    if (fit.answer !== 'yes') throw new Error('It fits.');
    const { placement, scored } = fit.place;
    expect(Math.abs(placement.x - 1_500_000)).toBeGreaterThan(745_000);
    expect(Math.abs(placement.y)).toBeLessThan(1);
    expect(placement.angle).toBe(0);
    expect(scored.offcutArea).toBeGreaterThan(1500 * 900 * 0.99);
    expect(scored.wasteArea).toBeCloseTo(3000 * 900 - 1500 * 600, 3);
  });

  it('follows the figure where it is not down the middle of the slab', () => {
    const figure = { from: { x: 0, y: 100_000 }, to: { x: 3_000_000, y: 100_000 } };
    const fit = ask(board(3000, 900, { figure }), rectangle(1500, 600));
    expect(fit.answer === 'yes' && fit.place.placement.y).toBeCloseTo(100_000, 0);
  });
});

describe('properties of the answer', () => {
  const KIND = { length: [650, 1000], width: [230, 420], waviness: 40, stations: 10 } as const;
  const next = numbersFrom(77);
  const slabs = Array.from({ length: 40 }, (_, nr) => randomSlab(`${nr}`, next, KIND));
  const shape = rectangle(620, 260, 60);

  it('does not change when the slab is moved, mirrored or turned end for end', () => {
    for (const slab of slabs) {
      const answer = ask(slab, shape, { nearlyFrom: 1 }).answer;
      for (const move of [
        ({ x, y }: { x: number; y: number }) => ({ x: x + 1_234_567, y: y - 765_432 }),
        ({ x, y }: { x: number; y: number }) => ({ x, y: -y }),
        ({ x, y }: { x: number; y: number }) => ({ x: -x, y: -y }),
      ]) {
        const moved = unwrap(outlineFromPoints({ edge: slab.outline.ring.map(move) }));
        const defects = slab.defects.map((defect) =>
          defect.place.shape === 'circle'
            ? { ...defect, place: { ...defect.place, centre: move(defect.place.centre) } }
            : defect,
        );
        expect(ask({ ...slab, outline: moved, defects }, shape, { nearlyFrom: 1 }).answer).toBe(answer);
      }
    }
  });

  it('every smaller top named of a nearly lies in the wood, and one 3 mm larger all round does not', () => {
    const request = unwrap(readRequest(asked(shape, { nearlyFrom: 0.7 })));
    let seen = 0;
    for (const slab of slabs) {
      const fit = fitOnePiece(slab, request);
      if (fit.answer !== 'nearly') continue;
      seen += 1;
      for (const top of [fit.missing.largest, fit.missing.tooNarrow, fit.missing.tooShort]) {
        if (top)
          expect(holdsShape(regionFor(slab, request), top.sizes, top.found.part, top.found.placement)).toBe(true);
      }
      const { length, width } = fit.missing.largest;
      const more = (8 * length) / width;
      const larger = rectangle(length / 1e6 + more, width / 1e6 + 8, 0);
      expect(ask(slab, { ...larger, cornerRadius: mm(60) } as TopShape, { nearlyFrom: 1 }).answer).toBe('no');
    }
    expect(seen).toBeGreaterThan(8);
  });

  it('hands out slab after slab with how many are done, and stops when asked no more', () => {
    const request = unwrap(readRequest(asked(shape)));
    const said = [];
    for (const { id, done, of } of fitSlabs(slabs, request)) {
      said.push([id, done, of]);
      if (done === 3) break;
    }
    expect(said).toEqual([
      ['0', 1, 40],
      ['1', 2, 40],
      ['2', 3, 40],
    ]);
  });
});

describe('a request that cannot be', () => {
  it.each([
    [rectangle(0, 100), {}, 'bad-length'],
    [rectangle(100, -1), {}, 'bad-width'],
    [rectangle(16_000, 100), {}, 'bad-length'],
    [rectangle(100, 50, 26), {}, 'bad-corner-radius'],
    [{ kind: 'superellipse', length: mm(10), width: mm(10), exponent: 1 }, {}, 'bad-exponent'],
    [rectangle(100, 50), { grainWindow: 46 }, 'bad-grain-window'],
    [rectangle(100, 50), { grainWindow: Number.NaN }, 'bad-grain-window'],
    [rectangle(100, 50), { edgeAllowance: mm(-1) }, 'bad-allowance'],
    [rectangle(100, 50), { tolerance: mm(0.05) }, 'bad-tolerance'],
    [rectangle(100, 50), { nearlyFrom: 0.4 }, 'bad-nearly-from'],
  ] as const)('%o %o is %s', (shape, more, code) => {
    expect(readRequest(asked(shape, more))).toMatchObject({ ok: false, error: { code } });
  });
});
