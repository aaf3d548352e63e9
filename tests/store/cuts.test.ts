import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Become, type CutPiece, cutPiece } from '@/app/_server/cuts/cut-piece';
import { cutStraps } from '@/app/_server/cuts/cut-straps';
import { addJob } from '@/app/_server/jobs/add-job';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addPlace } from '@/app/_server/places/add-place';
import { changeMarks } from '@/app/_server/shapes/change-marks';
import { measureByStations } from '@/app/_server/shapes/measure-by-stations';
import { changeHold } from '@/app/_server/stock/change-hold';
import { changePiece } from '@/app/_server/stock/change-piece';
import { givePiece } from '@/app/_server/stock/give-piece';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { moveStock } from '@/app/_server/stock/move-stock';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import type { NamedLine } from '@/shared/outline/cut-line';
import { outlineArea, twiceArea } from '@/shared/outline/outline-area';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { ChalkLine } from '@/shared/outline/station';
import { nanometres } from '@/shared/units/nanometres';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const mm = (length: number) => nanometres(Math.round(length * 1e6));
const um = (length: number) => Math.round(length * 1000);
const chalk = (...stations: [number, number, number][]): ChalkLine => ({
  stations: stations.map(([at, left, right]) => ({ at: mm(at), left: mm(left), right: mm(right) })),
});
const across = (x: number, kerf = 3.2): NamedLine => ({
  way: kerf > 0 ? 'cross' : 'break',
  points: [
    { x: um(x), y: 0 },
    { x: um(x), y: 1 },
  ],
  kerf: um(kerf),
});
const along = (y: number, kerf = 3.2): NamedLine => ({
  way: 'rip',
  points: [
    { x: 0, y: um(y) },
    { x: 1, y: um(y) },
  ],
  kerf: um(kerf),
});
const keep = (as: Become['as'] = 'slab', promised = true): Become => ({ as, promised });

let test: TestBook;
beforeAll(async () => {
  test = await freshBook();
});
afterAll(async () => {
  expect((await proveBook(test.book.read)).differences).toEqual([]);
  await test.remove();
});

const line = async (label: string) => {
  const found = await loadPiece(test.book.read, label);
  if (!found) throw new Error(`${label} is gone.`);
  return found;
};

/** A slab of 2400 mm, wider in its middle, of flitch A, number 3, that cost 1000.01. */
async function slab({ measured = true, ...more }: Partial<Parameters<typeof aSlab>[0]> & { measured?: boolean } = {}) {
  const flags = ['live-edge-left', 'live-edge-right'] as const;
  const { pieces } = must(
    await receivePieces(test.book, by(), aSlab({ flags: [...flags], costMinor: 100_001, ...more })),
  );
  const label = pieces[0]?.label ?? '';
  if (measured) {
    const chalkLine = chalk([0, 300, 310], [1200, 360, 352.5], [2400, 280, 300]);
    must(await measureByStations(test.book, by(), { label, chalkLine, why: '' }));
  }
  return label;
}

async function cut(label: string, lines: NamedLine[], become: Become[], key?: string) {
  const { shape } = await line(label);
  const how = { by: 'lines' as const, lines, bands: 'kept' as const };
  return cutPiece(test.book, by(key), { label, shapeId: shape?.id ?? null, how, become, why: '' });
}

describe('a slab cut in three', () => {
  it('gives pieces with their part of outline, cost and readings, where it was', async () => {
    const place = must(await addPlace(test.book, by(), { name: 'Slab rack', kind: 'rack' }));
    const label = await slab({ placeLabel: place.label });
    const before = await line(label);
    const answer = must(await cut(label, [across(800), across(1600)], [keep(), keep('scrap'), keep('offcut')]));
    expect(answer).toMatchObject({ scrap: 1, pieces: [{}, {}] });
    const [one, three] = await Promise.all(answer.pieces.map((piece) => line(piece.label)));
    if (!one?.shape || !three?.shape || !before.shape) throw new Error('No outline was kept.');
    expect((await line(label)).facts.inStock).toBe(false);
    for (const piece of [one, three]) {
      expect(piece).toMatchObject({ species: 'Walnut', placeLabel: place.label, shape: { source: 'cut' } });
      expect(piece.facts).toMatchObject({ inStock: true, hold: 'free' });
      expect(piece.readings).toMatchObject([{ mcTenths: 96, inherited: true }]);
      expect(boundsOf(piece.shape?.outline.ring ?? []).left).toBe(0);
      expect(piece.facts.flags).toEqual(['live-edge-left', 'live-edge-right']);
    }
    expect(one.label[0]).toBe('S');
    expect(three.label[0]).toBe('F');
    expect([one.lengthNm, three.lengthNm]).toEqual([mm(800 - 1.6), mm(800 - 1.6)]);
    expect(Number(one.cost?.minor) + Number(three.cost?.minor)).toBe(100_001);

    const kept = await test.book.read.cut.findUniqueOrThrow({ where: { entryId: answer.entryId } });
    expect(kept).toMatchObject({ kind: 'cut', kerfNm: 3_200_000n });
    const shared = JSON.parse(kept.lines) as { whole: number; sawdust: number; parts: { share: number }[] };
    const [scrap] = JSON.parse(kept.scrap) as [{ share: number }];
    expect(shared.whole).toBe(twiceArea(before.shape.outline));
    expect(shared.parts.map(({ share }) => share)).toEqual(
      [one, three].map((each) => twiceArea(each.shape?.outline as never)),
    );
    expect(shared.parts.reduce((sum, { share }) => sum + share, scrap.share + shared.sawdust)).toBe(shared.whole);
    // Two kerfs of 3.2 mm, through wood 678.33 mm and 668.33 mm wide; eight corners rounded to the micrometre, each at the
    // end of an edge of up to 800 mm, move it by no more than 0.2 mm² each.
    expect(Math.abs(shared.sawdust / 2e6 - 3.2 * (678.3333 + 668.3333))).toBeLessThan(8 * 0.2);
  });

  it('is brought back whole while no piece has moved on, once', async () => {
    const label = await slab();
    const { entryId, pieces } = must(await cut(label, [across(800), across(1600)], [keep(), keep('scrap'), keep()]));
    expect(refusedWith(await reverseEntry(test.book, by(), { entryId, why: ' ' }))).toBe('reason-needed');
    must(await reverseEntry(test.book, by('undone'), { entryId, why: 'Wrong slab' }));
    expect((await line(label)).facts.inStock).toBe(true);
    for (const piece of pieces) expect((await line(piece.label)).facts.inStock).toBe(false);
    expect(refusedWith(await reverseEntry(test.book, by(), { entryId, why: 'Again' }))).toBe('already-reversed');
    const undone = await test.book.read.entry.findUniqueOrThrow({ where: { key: 'undone' } });
    expect(refusedWith(await reverseEntry(test.book, by(), { entryId: undone.id, why: 'No' }))).toBe(
      'cut-again-instead',
    );
    must(await cut(label, [across(1000)], [keep(), keep()]));
  });

  it('is not brought back once a piece has moved on, and the piece is named', async () => {
    const { label: placeLabel } = must(await addPlace(test.book, by(), { name: 'Bench', kind: 'bench' }));
    const { jobId } = must(
      await addJob(test.book, by(), { name: 'Table', purpose: 'client', client: 'Marlow', dayOfUse: TODAY, note: '' }),
    );
    const steps: [string, (label: string) => Promise<unknown>][] = [
      ['moved', async (one) => must(await moveStock(test.book, by(), { labels: [one], placeLabel }))],
      ['given', async (one) => must(await givePiece(test.book, by(), { label: one, act: 'promise', jobId }))],
      ['gone', async (one) => must(await cut(one, [across(300)], [keep(), keep()]))],
      [
        'measured',
        async (one) =>
          must(
            await measureByStations(test.book, by(), {
              label: one,
              chalkLine: chalk([0, 300, 300], [700, 300, 300]),
              why: 'Planed',
            }),
          ),
      ],
      [
        'marked',
        async (one) =>
          must(
            await changeMarks(test.book, by(), {
              label: one,
              add: [{ is: 'end-check', end: 'start', depth: mm(20), note: '' }],
              remove: [],
              why: '',
            }),
          ),
      ],
      [
        'held',
        async (one) => {
          const { stockId } = await line(one);
          return must(await changeHold(test.book, by(), { stockId, hold: 'on-hold', why: 'Look at it' } as never));
        },
      ],
    ];
    for (const [because, step] of steps) {
      const label = await slab();
      const { entryId, pieces } = must(await cut(label, [across(800)], [keep(), keep()]));
      const second = pieces[1]?.label ?? '';
      await step(second);
      const refused = await reverseEntry(test.book, by(), { entryId, why: 'Mistake' });
      expect(refused).toMatchObject({ ok: false, error: { code: 'moved-on', facts: { label: second, because } } });
      expect((await line(label)).facts.inStock).toBe(false);
    }
  });

  it('is brought back where what happened to a piece was itself reversed', async () => {
    const { label: placeLabel } = must(await addPlace(test.book, by(), { name: 'Loft', kind: 'room' }));
    const label = await slab();
    const { entryId, pieces } = must(await cut(label, [across(800)], [keep(), keep()]));
    must(await moveStock(test.book, by('to-the-loft'), { labels: [pieces[0]?.label ?? ''], placeLabel }));
    const moved = await test.book.read.entry.findUniqueOrThrow({ where: { key: 'to-the-loft' } });
    must(await reverseEntry(test.book, by(), { entryId: moved.id, why: 'No' }));
    must(await reverseEntry(test.book, by(), { entryId, why: 'Mistake' }));
    expect((await line(label)).facts.inStock).toBe(true);
  });
});

describe('two people at one slab', () => {
  it('cut it once: one wins, the other is told who and what came of it', async () => {
    const label = await slab();
    const results = await Promise.all([
      cut(label, [across(800)], [keep(), keep()]),
      cut(label, [across(1200), across(1800)], [keep(), keep(), keep()]),
    ]);
    const won = results.filter((each) => each.ok);
    const lost = results.filter((each) => !each.ok);
    expect([won, lost]).toMatchObject([[{}], [{ error: { code: 'cut-already', facts: { label, who: 'Ada' } } }]]);
    const made = won[0]?.ok ? won[0].value.answer.pieces.length : 0;
    expect(await test.book.read.piece.count({ where: { cutFrom: { parent: { stock: { label } } } } })).toBe(made);
  });

  it('are not given pieces of an outline that was measured again', async () => {
    const label = await slab();
    const { shape } = await line(label);
    must(
      await measureByStations(test.book, by(), {
        label,
        chalkLine: chalk([0, 300, 300], [2300, 300, 300]),
        why: 'Tape slipped',
      }),
    );
    const how = { by: 'lines' as const, lines: [across(800)], bands: 'kept' as const };
    const late = { label, shapeId: shape?.id ?? null, how, become: [keep(), keep()], why: '' };
    expect(refusedWith(await cutPiece(test.book, by(), late))).toBe('measured-meanwhile');
  });

  it('write one cut with one key', async () => {
    const label = await slab();
    const once = must(await cut(label, [across(800)], [keep(), keep()], 'one-press'));
    expect(must(await cut(label, [across(800)], [keep(), keep()], 'one-press'))).toEqual(once);
  });
});

describe('what a piece has of its slab', () => {
  it('is the promise and the hold, as they were chosen', async () => {
    const { jobId } = must(
      await addJob(test.book, by(), { name: 'Bench', purpose: 'client', client: 'Ash', dayOfUse: TODAY, note: '' }),
    );
    const label = await slab();
    must(await givePiece(test.book, by(), { label, act: 'promise', jobId }));
    const { entryId, pieces } = must(await cut(label, [across(800)], [keep('slab', true), keep('slab', false)]));
    const jobs = await Promise.all(pieces.map(async (piece) => (await line(piece.label)).facts.promisedTo?.name));
    expect(jobs).toEqual(['Bench', undefined]);
    expect((await line(label)).facts.promisedTo).toBeUndefined();
    must(await reverseEntry(test.book, by(), { entryId, why: 'Mistake' }));
    expect((await line(label)).facts.promisedTo?.name).toBe('Bench');
  });

  it('is every mark that lies on it, clipped, and the checks as far as they still run', async () => {
    const label = await slab();
    must(
      await changeMarks(test.book, by(), {
        label,
        add: [
          {
            is: 'defect',
            kind: 'knot',
            place: { shape: 'circle', centre: { x: um(800), y: 0 }, radius: um(60) },
            depth: { face: 'through' },
            decision: 'fill',
            note: 'Loose',
          },
          { is: 'end-check', end: 'start', depth: mm(150), note: '' },
          { is: 'strap', from: { x: um(1500), y: um(-300) }, to: { x: um(1500), y: um(300) }, note: '' },
        ],
        remove: [],
        why: '',
      }),
    );
    const { pieces } = must(await cut(label, [across(100), across(800)], [keep('offcut'), keep(), keep()]));
    const [end, left, right] = await Promise.all(pieces.map(async (piece) => line(piece.label)));
    expect(end?.marks.endChecks).toMatchObject([{ end: 'start', depth: mm(98.4) - 1000 }]);
    expect(left?.marks.endChecks).toMatchObject([{ end: 'start', depth: mm(150 - 101.6) }]);
    expect(left?.marks.defects).toMatchObject([{ kind: 'knot', decision: 'fill', note: 'Loose' }]);
    expect(right?.marks.defects).toHaveLength(1);
    expect(right?.marks.straps).toMatchObject([{ from: { x: um(1500 - 801.6), y: um(-300) } }]);
    expect([end, left, right].map((each) => each?.facts.flags.includes('strapped'))).toEqual([false, false, true]);
    expect([end, left, right].map((each) => each?.facts.flags.includes('checked'))).toEqual([true, true, false]);
  });

  it('is the live edge on its own side after a rip, and the number of its flitch', async () => {
    const label = await slab({ flitch: 'A', firstFlitchNumber: 3 } as never);
    const { pieces } = must(await cut(label, [along(0)], [keep(), keep()]));
    const [left, right] = await Promise.all(pieces.map(async (piece) => line(piece.label)));
    expect([left?.facts.flags, right?.facts.flags]).toEqual([['live-edge-left'], ['live-edge-right']]);
    if (!left) throw new Error('No left half.');
    expect([left.flitch, right?.flitchNumber]).toEqual(['A', left.flitchNumber]);
    const { species, lengthNm, widthStartNm, widthMiddleNm, widthEndNm, thicknessNm, flitch } = left;
    const sizes = { lengthNm, widthStartNm, widthMiddleNm, widthEndNm, thicknessNm };
    const flags = left.facts.flags as ('live-edge-left' | 'live-edge-right')[];
    const flitchNumber = left.flitchNumber ?? undefined;
    must(
      await changePiece(test.book, by(), {
        ...sizes,
        label: left.label,
        species,
        flitch,
        flitchNumber,
        flags: [...flags],
        note: 'The better half',
        why: '',
      }),
    );
  });

  it('is nothing of a reading that was taken elsewhere', async () => {
    const label = await slab();
    const { stockId } = await line(label);
    const entry = await test.book.read.entry.findFirstOrThrow({ where: { stockId }, select: { id: true } });
    await test.book.write((tx) =>
      tx.reading.create({
        data: {
          pieceId: stockId,
          entryId: entry.id,
          takenOn: TODAY,
          mcTenths: 132,
          meter: 'pins',
          spot: '',
          alongNm: BigInt(mm(2000)),
          acrossNm: BigInt(mm(-50)),
        },
      }),
    );
    const { pieces } = must(await cut(label, [across(800)], [keep(), keep()]));
    const [near, far] = await Promise.all(pieces.map(async (piece) => line(piece.label)));
    expect(near?.readings.map(({ mcTenths }) => mcTenths)).toEqual([96]);
    expect(far?.readings.map(({ mcTenths }) => mcTenths).sort()).toEqual([132, 96]);
    expect(far?.readings.find(({ mcTenths }) => mcTenths === 132)).toMatchObject({
      alongNm: mm(2000 - 801.6),
      acrossNm: mm(-50),
    });
  });
});

describe('resawing', () => {
  it('makes a bookmatched pair, the lower half turned over, the thickness shared to the nanometre', async () => {
    const label = await slab();
    const { shape, thicknessNm } = await line(label);
    const asked: CutPiece = {
      label,
      shapeId: shape?.id ?? null,
      how: { by: 'resaw', upperNm: mm(25), kerfNm: mm(3) },
      become: [keep(), keep()],
      why: '',
    };
    const thin = { ...asked, how: { ...asked.how, upperNm: thicknessNm - mm(3.5) } as CutPiece['how'] };
    expect(refusedWith(await cutPiece(test.book, by(), thin))).toBe('resaw-too-thin');
    const { pieces } = must(await cutPiece(test.book, by(), asked));
    const [upper, lower] = await Promise.all(pieces.map(async (piece) => line(piece.label)));
    expect([upper?.thicknessNm, lower?.thicknessNm]).toEqual([mm(25), mm(30)]);
    expect(upper?.pairedWith?.label).toBe(lower?.label);
    expect(lower?.pairedWith?.label).toBe(upper?.label);
    expect(upper?.shape?.outline).toEqual(shape?.outline);
    const mirrored = [...(shape?.outline.ring ?? [])].map(({ x, y }) => ({ x, y: -y + 0 })).reverse();
    expect(lower?.shape?.outline.ring).toEqual(mirrored);
    // 25 and 30 of 55 mm: 45 455 and 54 546 of 100 001.
    expect([Number(upper?.cost?.minor), Number(lower?.cost?.minor)]).toEqual([45_455, 54_546]);
  });
});

describe('cutting the bands', () => {
  const strapped = async () => {
    const label = await slab();
    must(
      await changeMarks(test.book, by(), {
        label,
        add: [{ is: 'strap', from: { x: um(500), y: um(-300) }, to: { x: um(500), y: um(300) }, note: '' }],
        remove: [],
        why: '',
      }),
    );
    return label;
  };

  it('of a slab that holds takes them off, and it stays one piece', async () => {
    const label = await strapped();
    must(await cutStraps(test.book, by(), { label, why: 'It holds' }));
    const after = await line(label);
    expect(after.marks.straps).toEqual([]);
    expect(after.facts).toMatchObject({ inStock: true, flags: ['live-edge-left', 'live-edge-right'] });
    expect(refusedWith(await cutStraps(test.book, by(), { label, why: '' }))).toBe('no-straps');
  });

  it('of a broken one lets it fall along its breaks: no wood is lost, and no piece is strapped', async () => {
    const label = await strapped();
    const { shape } = await line(label);
    const jagged = { ...across(0, 0), points: [um(-300), 0, um(300)].map((y, nr) => ({ x: um(900 + 40 * nr), y })) };
    const { entryId, pieces } = must(
      await cutPiece(test.book, by(), {
        label,
        shapeId: shape?.id ?? null,
        how: { by: 'lines', lines: [jagged], bands: 'cut' },
        become: [keep(), keep()],
        why: '',
      }),
    );
    const parts = await Promise.all(pieces.map(async (piece) => line(piece.label)));
    expect(parts.flatMap(({ marks }) => marks.straps)).toEqual([]);
    expect(parts.some(({ facts }) => facts.flags.includes('strapped'))).toBe(false);
    const area = parts.reduce((sum, { shape: own }) => sum + outlineArea(own?.outline as never), 0);
    expect(area).toBeCloseTo(outlineArea(shape?.outline as never), -1);
    const kept = await test.book.read.cut.findUniqueOrThrow({ where: { entryId } });
    expect(kept.kind).toBe('unstrap');
    expect(JSON.parse(kept.lines)).toMatchObject({ sawdust: 0 });
  });
});

describe('what cannot be cut', () => {
  it('is said, with the line that is wrong, and nothing is written', async () => {
    const label = await slab();
    const before = await test.book.read.piece.count();
    expect(await cut(label, [across(800), across(5000)], [keep(), keep()])).toMatchObject({
      error: { code: 'line-does-not-cut', field: 'lines.1', facts: { why: 'line-misses-the-wood', line: 2 } },
    });
    expect(refusedWith(await cut(label, [], []))).toBe('no-line');
    expect(refusedWith(await cut(label, [across(800)], [keep('scrap'), keep('scrap')]))).toBe('all-scrap');
    expect(refusedWith(await cut(label, [across(800)], [keep()]))).toBe('measured-meanwhile');
    expect(refusedWith(await cut(label, [across(800, 60)], [keep(), keep()]))).toBe('outside-range');
    expect(await test.book.read.piece.count()).toBe(before);
    expect((await line(label)).facts.inStock).toBe(true);
  });

  it('is cut by its three widths where nobody measured it', async () => {
    const label = await slab({ measured: false });
    const { pieces } = must(await cut(label, [across(1500)], [keep(), keep()]));
    expect(await line(pieces[0]?.label ?? '')).toMatchObject({ lengthNm: mm(1498.4), widthStartNm: mm(700) });
  });
});
