import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { FitAsk } from '@/app/_server/fits/fit-ask';
import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import { type FitLimits, whatFits } from '@/app/_server/fits/what-fits';
import { addJob } from '@/app/_server/jobs/add-job';
import { changeHold } from '@/app/_server/stock/change-hold';
import { givePiece } from '@/app/_server/stock/give-piece';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { type ReceivePieces, receivePieces } from '@/app/_server/stock/receive-pieces';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';

const mm = (count: number) => nanometres(count * 1_000_000);

describe('the outline of a piece', () => {
  it('has its three widths in micrometres about a middle line, counter-clockwise', () => {
    const outline = unwrap(
      outlineOfPiece({ lengthNm: mm(2000), widthStartNm: mm(500), widthMiddleNm: mm(400), widthEndNm: mm(520) }),
    );
    expect(outline.holes).toEqual([]);
    const corners = outline.ring.map(({ x, y }) => `${x},${y}`).sort();
    expect(corners).toEqual(
      ['0,-250000', '0,250000', '1000000,-200000', '1000000,200000', '2000000,-260000', '2000000,260000'].sort(),
    );
  });

  it('keeps an odd width whole to the micrometre', () => {
    const width = nanometres(500_001_000);
    const outline = unwrap(
      outlineOfPiece({ lengthNm: mm(2000), widthStartNm: width, widthMiddleNm: width, widthEndNm: width }),
    );
    const across = outline.ring.filter(({ x }) => x === 0).map(({ y }) => y);
    expect(Math.max(...across) - Math.min(...across)).toBeGreaterThanOrEqual(500_001);
    expect(Math.max(...across) - Math.min(...across)).toBeLessThanOrEqual(500_002);
  });
});

describe('what a top can be cut from', () => {
  let test: TestBook;
  const labels: Record<string, string> = {};
  const receive = async (name: string, more: Partial<ReceivePieces>) => {
    const { pieces } = must(await receivePieces(test.book, by(), aSlab(more)));
    labels[name] = pieces[0]?.label ?? '';
  };
  beforeAll(async () => {
    test = await freshBook();
    // The waist of the slab is 650 mm: the top of 2000 × 600 mm goes in, one of 2000 × 660 mm lacks some width.
    await receive('good', {});
    await receive('strapped', { species: 'Elm', flags: ['strapped'], thicknessNm: 30_000_000 });
    await receive('promised', { species: 'Elm' });
    await receive('held', { species: 'Elm' });
    await receive('unread', { species: 'Elm', reading: undefined });
    await receive('short', { species: 'Elm', lengthNm: 1_200_000_000 });
    await receive('sheet', { form: 'sheet', flags: [], reading: undefined });
    const job = must(
      await addJob(test.book, by(), {
        name: 'Rowan table',
        purpose: 'client',
        client: 'Marlow',
        dayOfUse: day('2026-12-20'),
        note: '',
      }),
    );
    must(await givePiece(test.book, by(), { label: labels.promised ?? '', act: 'promise', jobId: job.jobId }));
    const held = await loadPiece(test.book.read, labels.held ?? '');
    must(await changeHold(test.book, by(), { stockId: held?.stockId ?? 0, hold: 'on-hold', why: 'Bark beetle?' }));
  });
  afterAll(() => test.remove());

  const ask = (width: number, more: Partial<FitAsk> = {}): FitAsk => ({
    request: {
      shape: { kind: 'rectangle', length: mm(2000), width: mm(width), cornerRadius: mm(40) },
      grainWindow: 5,
      edgeAllowance: mm(12),
      trims: { start: mm(50), end: mm(50) },
      filling: true,
    },
    make: { of: 'one' },
    freeOnly: false,
    ...more,
  });
  const fits = async (asked: FitAsk, limits?: Partial<FitLimits>) =>
    unwrap(await whatFits(test.book, asked, { today: TODAY, currency: 'USD' }, limits));

  it('is a slab it has room in, ranked with what is free and sound first; sheets are not asked', async () => {
    const found = await fits(ask(600, { mostTenths: 100, thickness: mm(45) }));
    expect(found).toMatchObject({ looked: 6, total: 6 });
    expect(found.cut).toBeUndefined();
    const names = found.ranked.map(({ line }) => Object.keys(labels).find((name) => labels[name] === line.label));
    expect(names[0]).toBe('good');
    expect([...names].sort()).toEqual(['good', 'held', 'promised', 'strapped', 'unread']);
    expect(found.noes.map(({ line }) => line.label)).toEqual([labels.short]);
    const of = (name: string) => found.ranked.find(({ line }) => line.label === labels[name]);
    const codes = (name: string) => of(name)?.conditions.map(({ code }) => code);
    expect(of('good')?.judged.fit.answer).toBe('yes');
    expect(codes('good')).toEqual([]);
    // 30 mm less 6 mm of flattening leaves 24 mm of the 45 mm asked.
    expect(of('strapped')?.conditions[0]).toEqual({ code: 'too-thin', by: 21_000_000, left: 24_000_000 });
    expect(codes('strapped')).toEqual(['too-thin', 'strapped']);
    expect(codes('promised')).toEqual(['promised-elsewhere']);
    expect(codes('held')).toEqual(['held']);
    expect(codes('unread')).toEqual(['no-reading']);
    for (const { reasons } of found.ranked) expect(reasons.map(({ about }) => about)).toContain('fit');
  });

  it('is nearly a slab whose waist is too narrow, and says by how much', async () => {
    const { ranked } = await fits(ask(660, { species: 'Walnut' }));
    const [only] = ranked;
    if (only?.judged.fit.answer !== 'nearly') throw new Error('Not nearly');
    const { tooNarrow } = only.judged.fit.missing;
    // At the waist 650 mm less twice 12 mm leave 626 mm, at most: 34 mm or more are missing.
    expect(tooNarrow?.by).toBeGreaterThanOrEqual(mm(34));
    expect(tooNarrow?.by).toBeLessThanOrEqual(mm(40));
  });

  it('is wet by the wettest reading of the newest day, where a moisture is asked for', async () => {
    const [wet] = (await fits(ask(600, { species: 'Walnut', mostTenths: 80 }))).ranked;
    expect(wet?.conditions).toEqual([{ code: 'wet', weight: 'care', mcTenths: 96, mostTenths: 80 }]);
    const [any] = (await fits(ask(600, { species: 'Walnut' }))).ranked;
    expect(any?.conditions).toEqual([]);
  });

  it('puts a piece whose reading is too old to go by after one read lately', async () => {
    must(
      await receivePieces(test.book, by(), {
        ...aSlab({ species: 'Cherry', receivedOn: day('2026-08-01'), costMinor: 100 }),
        reading: { mcTenths: 90, meter: 'pins', spot: '' },
      }),
    );
    await receive('cherry', { species: 'Cherry' });
    const { ranked } = await fits(ask(600, { species: 'Cherry', mostTenths: 100 }));
    expect(ranked.map(({ conditions }) => conditions.map(({ code }) => code))).toEqual([[], ['reading-old']]);
    const old = ranked[1]?.reasons.find(({ about }) => about === 'dry');
    expect(old?.standing).toBe('unknown');
  });

  it('leaves out what is promised or held where only free wood is asked for', async () => {
    const found = await fits(ask(600, { species: 'Elm', freeOnly: true }));
    expect(found.ranked.map(({ line }) => line.label).sort()).toEqual([labels.strapped, labels.unread].sort());
  });

  it('says when it looked at fewer than there are, for their number or for time', async () => {
    expect(await fits(ask(600), { most: 2 })).toMatchObject({ looked: 2, total: 8, cut: 'most' });
    let now = 0;
    const clock = () => {
      now += 600;
      return now;
    };
    const hurried = await fits(ask(600), { milliseconds: 1000, clock });
    expect(hurried).toMatchObject({ total: 8, cut: 'time', looked: 1 });
  });

  it('refuses a top that cannot be', async () => {
    const answer = await whatFits(test.book, ask(0), { today: TODAY, currency: 'USD' });
    expect(answer).toMatchObject({ ok: false, error: { code: 'bad-width' } });
  });
});
