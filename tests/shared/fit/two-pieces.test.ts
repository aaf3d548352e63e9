import { describe, expect, it } from 'vitest';
import { drawnShape } from '@/shared/fit/drawn-shape';
import { fitBookmatched } from '@/shared/fit/fit-bookmatched';
import { type FitRequest, readRequest, type SlabToSearch } from '@/shared/fit/fit-request';
import { checkRiver, fitRiver, type RiverRequest } from '@/shared/fit/fit-river';
import type { TopShape } from '@/shared/fit/top-shape';
import { outlineFromStations } from '@/shared/outline/outline-from-stations';
import { placeOfPoint } from '@/shared/outline/place-of-point';
import { unwrap } from '@/shared/result/result';
import { mm, numbersFrom, randomSlab } from './random-slab';

/** Stations in millimetres: along, left, right. */
const slabOf = (...rows: readonly (readonly [number, number, number])[]): SlabToSearch => ({
  id: 'slab',
  outline: unwrap(
    outlineFromStations({
      stations: rows.map(([at, left, right]) => ({ at: mm(at), left: mm(left), right: mm(right) })),
    }),
  ),
  defects: [],
  endChecks: [],
});
const board = (long: number, wide: number) => slabOf([0, wide / 2, wide / 2], [long, wide / 2, wide / 2]);
const request = (shape: TopShape, more: Partial<FitRequest> = {}) =>
  unwrap(
    readRequest({
      shape,
      grainWindow: 3,
      edgeAllowance: mm(0),
      trims: { start: mm(0), end: mm(0) },
      filling: true,
      ...more,
    }),
  );
const rectangle = (length: number, width: number, cornerRadius = 0): TopShape => ({
  kind: 'rectangle',
  length: mm(length),
  width: mm(width),
  cornerRadius: mm(cornerRadius),
});

describe('a bookmatched pair', () => {
  it('needs half the width from each sister', () => {
    const pair = [board(2000, 450), board(2000, 450)] as const;
    expect(fitBookmatched(pair, request(rectangle(1900, 890))).answer).toBe('yes');
    expect(fitBookmatched(pair, request(rectangle(1900, 904), { grainWindow: 0 }))).toMatchObject({
      answer: 'nearly',
      missing: { tooNarrow: { by: mm(4) } },
    });
  });

  it('takes both halves from one place, so that they mirror one another', () => {
    // Each sister is wide enough, but at different ends.
    const one = slabOf([0, 250, 250], [1000, 250, 250], [1010, 60, 60], [2000, 60, 60]);
    const two = slabOf([0, 60, 60], [990, 60, 60], [1000, 250, 250], [2000, 250, 250]);
    expect(fitBookmatched([one, one], request(rectangle(900, 900))).answer).toBe('yes');
    expect(fitBookmatched([two, two], request(rectangle(900, 900))).answer).toBe('yes');
    expect(fitBookmatched([one, two], request(rectangle(900, 900))).answer).toBe('no');
  });

  it('lays the half of any shape in both sisters', () => {
    const next = numbersFrom(5);
    const kind = { length: [900, 1100], width: [250, 340], waviness: 30, stations: 10 } as const;
    const shapes = [rectangle(800, 420, 120), { kind: 'oval', length: mm(900), width: mm(420) }] as const;
    let yes = 0;
    for (let nr = 0; nr < 30; nr += 1) {
      const pair = [randomSlab('a', next, kind), randomSlab('b', next, kind)] as const;
      const of = request(shapes[nr % 2] ?? shapes[0], { nearlyFrom: 1 });
      const fit = fitBookmatched(pair, of);
      if (fit.answer !== 'yes') continue;
      yes += 1;
      const half = drawnShape(of.sizes, fit.place.part, fit.place.placement);
      for (const point of half) {
        // Two micrometres towards the middle of the half, so that the joint or the edge may lie on the wood's own.
        const { x, y } = inward(point, half);
        for (const { outline } of pair)
          expect(placeOfPoint(outline, { x: Math.round(x), y: Math.round(y) })).not.toBe('outside');
      }
    }
    expect(yes).toBeGreaterThan(5);
    expect(yes).toBeLessThan(30);
  });
});

type At = { readonly x: number; readonly y: number };
function inward({ x, y }: At, all: readonly At[]): At {
  const [cx, cy] = [
    all.reduce((sum, at) => sum + at.x, 0) / all.length,
    all.reduce((sum, at) => sum + at.y, 0) / all.length,
  ];
  const far = Math.hypot(cx - x, cy - y) || 1;
  return { x: x + (3 * (cx - x)) / far, y: y + (3 * (cy - y)) / far };
}

describe('two pieces either side of a river', () => {
  const river: RiverRequest = { least: mm(50), leastWood: mm(100), kerf: mm(5), thickness: mm(40) };

  it('from two straight boards leaves exactly the least river, and its resin is length × width × thickness', () => {
    const fit = fitRiver(
      [board(2000, 500), board(2000, 500)],
      request(rectangle(1800, 900), { grainWindow: 0 }),
      river,
    );
    if (fit.answer !== 'yes') throw new Error(JSON.stringify(fit));
    expect(fit.river.narrowest / 1000).toBeCloseTo(50, 2);
    expect(fit.river.widest / 1000).toBeCloseTo(50, 2);
    expect(fit.resin / (1800 * 50 * 40)).toBeCloseTo(1, 3);
    expect(fit.pieces.map(({ slab }) => slab)).toEqual([0, 1]);
  });

  it('from boards too narrow for that leaves as narrow a river as they can', () => {
    const fit = fitRiver(
      [board(2000, 300), board(2000, 250)],
      request(rectangle(1800, 900), { grainWindow: 0 }),
      river,
    );
    if (fit.answer !== 'yes') throw new Error(JSON.stringify(fit));
    expect(fit.river.widest / 1000).toBeCloseTo(900 - 300 - 250, 1);
  });

  it('from one slab sawn down its length turns both halves about, the saw cut taken off', () => {
    const fit = fitRiver([board(2000, 605)], request(rectangle(1800, 900), { grainWindow: 0 }), river);
    if (fit.answer !== 'yes') throw new Error(JSON.stringify(fit));
    expect(fit.river.narrowest / 1000).toBeCloseTo(300, 0);
    const [one, two] = fit.pieces.map(({ placement }) => placement.y / 1000);
    // Held 100 mm in from their backs, 5 mm of sawdust between the backs.
    expect((two ?? 0) - (one ?? 0)).toBeGreaterThan(205 - 0.01);
  });

  it('a wavy live edge gives a river nowhere narrower than the least, and no wider than the most when told', () => {
    const wavy = slabOf([0, 260, 200], [500, 220, 260], [1000, 280, 210], [1500, 230, 275], [2000, 270, 220]);
    const of = request(rectangle(1800, 700));
    const fit = fitRiver([wavy, wavy], of, river);
    if (fit.answer !== 'yes') throw new Error(JSON.stringify(fit));
    expect(fit.river.narrowest / 1000).toBeGreaterThanOrEqual(50 - 0.01);
    expect(fit.river.widest).toBeGreaterThan(fit.river.narrowest);
    const most = mm(fit.river.widest / 1000 + 1);
    const again = fitRiver([wavy, wavy], of, { ...river, most });
    expect(again.answer === 'yes' && again.river.widest / 1000).toBeLessThanOrEqual(most / 1e6 + 0.01);
    expect(fitRiver([wavy, wavy], of, { ...river, most: mm(50) })).toMatchObject({
      because: { code: 'banks-do-not-pair' },
    });
  });

  it('an oval has its tips of resin where the river runs out of it', () => {
    const fit = fitRiver(
      [board(2000, 460), board(2000, 460)],
      request({ kind: 'oval', length: mm(1800), width: mm(900) }, { grainWindow: 0 }),
      river,
    );
    if (fit.answer !== 'yes') throw new Error(JSON.stringify(fit));
    expect(fit.river.narrowest / 1000).toBeCloseTo(50, 1);
    // A straight strip 50 mm wide across an ellipse of 1800 × 900: ∫ min(50, 2 y(x)) dx.
    let area = 0;
    for (let nr = 0; nr < 20_000; nr += 1) {
      const x = -900 + (1800 * (nr + 0.5)) / 20_000;
      area += Math.min(50, 900 * Math.sqrt(1 - (x / 900) ** 2)) * (1800 / 20_000);
    }
    expect(fit.resin / (area * 40)).toBeCloseTo(1, 2);
  });

  it('an oval from boards too narrow for that leaves as narrow a river as they can, its closing tips no reason for more', () => {
    const fit = fitRiver(
      [board(2000, 300), board(2000, 250)],
      request({ kind: 'oval', length: mm(1800), width: mm(900) }, { grainWindow: 0 }),
      river,
    );
    if (fit.answer !== 'yes') throw new Error(JSON.stringify(fit));
    expect(fit.river.widest / 1000).toBeCloseTo(900 - 300 - 250, 1);
  });

  it('says which slab has no room for a piece, and what size would do', () => {
    const of = request(rectangle(1800, 900), { grainWindow: 0 });
    expect(fitRiver([board(2000, 300), board(1000, 300)], of, river)).toEqual({
      answer: 'no',
      because: { code: 'no-room-for-a-piece', slab: 1 },
    });
    const nearly = fitRiver([board(2000, 300), board(1700, 300)], of, river);
    expect(nearly).toMatchObject({ answer: 'nearly', because: { code: 'no-room-for-a-piece', slab: 1 } });
    if (nearly.answer === 'nearly') expect(nearly.largest.length / 1e6).toBeGreaterThan(1675);
  });

  it('refuses numbers that cannot be', () => {
    expect(checkRiver(river)).toBe(true);
    expect(checkRiver({ ...river, most: mm(49) })).toBe(false);
    expect(checkRiver({ ...river, least: mm(-1) })).toBe(false);
    expect(checkRiver({ ...river, leastWood: mm(0) })).toBe(false);
    expect(checkRiver({ ...river, thickness: mm(0) })).toBe(false);
  });
});

describe('what is kept out of a river top', () => {
  const river: RiverRequest = {
    least: mm(40),
    leastWood: mm(80),
    kerf: mm(4),
    thickness: mm(40),
  };
  const knotted = (y: number): SlabToSearch => ({
    ...board(2000, 600),
    defects: [
      {
        kind: 'knot',
        place: { shape: 'circle', centre: { x: 1_000_000, y: y * 1000 }, radius: 40_000 },
        depth: { face: 'through' },
        decision: 'keep-out',
      },
    ],
  });
  const asked = request(rectangle(1900, 700));

  it('lies in neither piece of wood: a piece is slid past it, and the river is no wider for it', () => {
    // 100 mm in from one edge: the wood beyond it is 160 mm to that edge, and 460 mm to the other.
    const fit = fitRiver([knotted(200), board(2000, 300)], asked, river);
    if (fit.answer !== 'yes') throw new Error(fit.answer);
    const { x, y, angle } = fit.pieces[0].placement;
    const over = fit.pieces[0].part.part === 'above' && fit.pieces[0].part.over;
    const turn = angle + (over ? Math.PI : 0);
    const up = -Math.sin(turn) * (1_000_000 - x) + Math.cos(turn) * (200_000 - y);
    // The held line is 80 mm inside the edge of the top: the whole knot lies beyond that edge.
    expect(up - 40_000).toBeGreaterThanOrEqual(80_000 - 1);
    expect(fit.river.widest - fit.river.narrowest).toBeLessThan(1000);
  });

  it('is in the way where no piece can be slid past it', () => {
    const narrow = { ...knotted(0), outline: board(2000, 200).outline };
    expect(fitRiver([narrow, narrow], asked, river).answer).not.toBe('yes');
    expect(fitRiver([board(2000, 330), board(2000, 330)], asked, river).answer).toBe('yes');
  });
});
