import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { addJob } from '@/app/_server/jobs/add-job';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addPlace } from '@/app/_server/places/add-place';
import { discard } from '@/app/_server/stock/discard';
import { givePiece } from '@/app/_server/stock/give-piece';
import { loadContainer } from '@/app/_server/stock/load-container';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { moveStock } from '@/app/_server/stock/move-stock';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import { beginStocktake } from '@/app/_server/stocktake/begin-stocktake';
import { giveUpStocktake } from '@/app/_server/stocktake/give-up-stocktake';
import { listStocktakes } from '@/app/_server/stocktake/list-stocktakes';
import { noteCounted } from '@/app/_server/stocktake/note-counted';
import { noteSeen, type Sighting } from '@/app/_server/stocktake/note-seen';
import { type PostedStocktake, postStocktake } from '@/app/_server/stocktake/post-stocktake';
import { stocktakePage } from '@/app/_server/stocktake/stocktake-page';
import { takeOffSighting } from '@/app/_server/stocktake/take-off-sighting';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import type { WalkChoice } from '@/shared/stocktake/choices-of';
import { aSlab, stocked } from '@/tests/support/stock-of-a-test';
import { by as anyBy, day, freshBook, must, NOW, refusedWith, type TestBook } from '@/tests/support/test-book';

describe('a stocktake', () => {
  let test: TestBook;
  let minute = 0;
  /** Every act a minute after the one before it, as on a walk. */
  const by = (who = 'Ada') => {
    minute += 1;
    return { ...anyBy(), who: { who, device: 'phone' }, now: new Date(NOW.getTime() + minute * 60_000) };
  };
  const tests: TestBook[] = [];
  let cabinet = '';
  let shelf = '';
  let barn = '';
  let tins: string[] = [];
  let slab = '';

  beforeEach(async () => {
    test = await freshBook();
    tests.push(test);
    const { book } = test;
    cabinet = must(await addPlace(book, by(), { name: 'Cabinet', kind: 'cabinet' })).label;
    shelf = must(await addPlace(book, by(), { name: 'Low shelf', kind: 'shelf', parentLabel: cabinet })).label;
    barn = must(await addPlace(book, by(), { name: 'Barn', kind: 'room' })).label;
    tins = (await stocked(book, { count: 4 })).labels;
    slab = must(await receivePieces(book, by(), aSlab())).pieces[0]?.label ?? '';
    must(await moveStock(book, by(), { labels: [tin(0), tin(1)], placeLabel: cabinet }));
    must(await moveStock(book, by(), { labels: [tin(2), slab], placeLabel: shelf }));
    must(await moveStock(book, by(), { labels: [tin(3)], placeLabel: barn }));
  });
  afterAll(async () => {
    for (const each of tests) await each.remove();
  });

  const tin = (nr: number) => tins[nr] ?? '';
  const begin = async () => must(await beginStocktake(test.book, by(), { placeLabel: cabinet })).stocktake;
  const see = async (stocktake: number, text: string, who?: string): Promise<Sighting> =>
    must(await noteSeen(test.book, by(who), { stocktake, text }));
  const count = async (stocktake: number, label: string, counted: number | null) =>
    must(await noteCounted(test.book, by(), { stocktake, stockId: await idOf(label), counted, grossMg: null }));
  const idOf = async (label: string) =>
    (await test.book.read.stock.findUniqueOrThrow({ where: { label }, select: { id: true } })).id;
  const walk = async (stocktake: number) => (await stocktakePage(test.book, stocktake))?.walk;
  const statuses = async (stocktake: number) =>
    Object.fromEntries((await walk(stocktake))?.things.map((each) => [each.label, each.status]) ?? []);
  /** Every line with what can be done about it, nothing left. */
  const decided = async (stocktake: number) => ({
    asOf: (await test.book.read.book.findUniqueOrThrow({ where: { id: 1 } })).revision,
    choices: ((await walk(stocktake))?.things ?? []).flatMap(({ stockId, delta, choices }) => {
      const choice: WalkChoice = choices.find((each) => each !== 'leave') ?? 'leave';
      return choices.length > 0 ? [{ stockId, delta, choice }] : [];
    }),
  });
  const post = async (stocktake: number, more = {}): Promise<PostedStocktake> =>
    must(
      await postStocktake(test.book, by(), {
        stocktake,
        why: 'Counted before the year ends.',
        ...(await decided(stocktake)),
        ...more,
      }),
    );
  const left = async (label: string) => (await loadContainer(test.book.read, label))?.left;
  const proven = async () => expect((await proveBook(test.book.read)).differences).toEqual([]);

  it('knows what it expects in a place and in the places inside it, and what it saw', async () => {
    const number = await begin();
    expect(await statuses(number)).toEqual({
      [tin(0)]: 'missing',
      [tin(1)]: 'missing',
      [tin(2)]: 'missing',
      [slab]: 'missing',
    });
    expect(await see(number, tin(0))).toMatchObject({ kind: 'thing', again: false, thing: { status: 'here' } });
    expect(await see(number, tin(0))).toMatchObject({ again: true });
    expect(await see(number, tin(3))).toMatchObject({ thing: { status: 'extra', place: 'Barn' } });
    expect(await see(number, shelf)).toEqual({ kind: 'place', name: 'Low shelf' });
    await count(number, tin(0), 2_100_000);
    expect(await statuses(number)).toMatchObject({ [tin(0)]: 'different', [tin(3)]: 'extra' });
    await count(number, tin(0), null);
    expect(await statuses(number)).toMatchObject({ [tin(0)]: 'here' });
  });

  it('writes nothing in the book until it is posted', async () => {
    const number = await begin();
    const before = await test.book.read.entry.count();
    await see(number, tin(0));
    await count(number, tin(0), 5);
    expect(await test.book.read.entry.count()).toBe(before);
    expect(await left(tin(0))).toBe(2_500_000);
    await proven();
  });

  it('keeps a code it does not know once, as it was read, and lets go of what was scanned by mistake', async () => {
    const number = await begin();
    for (let times = 0; times < 2; times += 1) {
      expect(await see(number, 'SHELF-TAG-9')).toMatchObject({ kind: 'kept', code: 'SHELF-TAG-9', means: 'unknown' });
    }
    const kept = (await walk(number))?.codes ?? [];
    expect(kept.map((each) => each.code)).toEqual(['SHELF-TAG-9']);
    must(await takeOffSighting(test.book, by(), { stocktake: number, lineId: kept[0]?.lineId ?? 0 }));
    await see(number, tin(3));
    must(await takeOffSighting(test.book, by(), { stocktake: number, stockId: await idOf(tin(3)) }));
    expect(await walk(number)).toMatchObject({ codes: [] });
    expect((await walk(number))?.things.map((each) => each.label)).not.toContain(tin(3));
    const again = await takeOffSighting(test.book, by(), { stocktake: number, stockId: await idOf(tin(3)) });
    expect(refusedWith(again)).toBe('not-seen-yet');
  });

  it('posts what is gone, moved and different as one entry with its reason, and the book proves', async () => {
    const number = await begin();
    await see(number, tin(0));
    await count(number, tin(0), 2_100_000);
    await see(number, tin(2));
    await see(number, slab);
    await see(number, tin(3));
    const posted = await post(number);
    expect(posted.done.map(({ label, choice, delta }) => ({ label, choice, delta }))).toEqual([
      { label: tin(0), choice: 'correct', delta: -400_000 },
      { label: tin(1), choice: 'gone', delta: -2_500_000 },
      { label: tin(3), choice: 'move', delta: 0 },
    ]);
    expect(posted.left).toEqual([]);
    expect([await left(tin(0)), await left(tin(1))]).toEqual([2_100_000, 0]);
    expect((await loadContainer(test.book.read, tin(3)))?.place).toBe('Cabinet');
    const entry = await test.book.read.entry.findUniqueOrThrow({
      where: { id: posted.entryId },
      include: { movements: true },
    });
    expect(entry).toMatchObject({ kind: 'stocktake-posted', why: 'Counted before the year ends.' });
    expect(entry.movements).toHaveLength(3);
    expect(await stocktakePage(test.book, number)).toMatchObject({ walk: null, posted: { entryId: posted.entryId } });
    await proven();
  });

  it('is undone whole by reversing that entry, and goes on again', async () => {
    const number = await begin();
    await see(number, tin(0));
    const { entryId } = await post(number);
    expect(await left(tin(1))).toBe(0);
    const { entries } = await history(test.book, {});
    expect(entries.find((each) => each.id === entryId)?.canReverse).toBe(true);
    must(await reverseEntry(test.book, by(), { entryId, why: 'Walked the wrong cabinet.' }));
    expect(await left(tin(1))).toBe(2_500_000);
    expect((await listStocktakes(test.book)).open.map((each) => each.stocktake)).toEqual([number]);
    // What the reversal wrote came after the walk began: it has to be looked at again.
    expect(await statuses(number)).toMatchObject({ [tin(0)]: 'here', [tin(1)]: 'changed' });
    await proven();
  });

  it('shows what somebody moved meanwhile, and does not write over it', async () => {
    const number = await begin();
    await see(number, tin(0));
    await see(number, tin(3));
    const chosen = await decided(number);
    must(await moveStock(test.book, by('Ben'), { labels: [tin(3)], placeLabel: shelf }));
    must(await weighContainer(test.book, by('Ben'), { label: tin(1), left: 2_000_000, why: 'In my hand' }));
    const posted = await post(number, chosen);
    expect(posted.overtaken).toEqual(
      [tin(1), tin(3)].map((label) => ({ label, name: 'Deep-pour resin, part A', by: 'Ben' })),
    );
    expect((await loadContainer(test.book.read, tin(3)))?.place).toBe('Low shelf, Cabinet');
    expect(await left(tin(1))).toBe(2_000_000);
    expect(posted.done.map((each) => each.label)).toEqual([tin(2), slab]);
    await proven();
  });

  it('leaves a line that another walker saw after the choices were made', async () => {
    const number = await begin();
    await see(number, tin(0));
    const chosen = await decided(number);
    await see(number, tin(1), 'Ben');
    const posted = await post(number, chosen);
    expect(posted.overtaken.map(({ label, by: who }) => [label, who])).toEqual([[tin(1), 'Ben']]);
    expect(await left(tin(1))).toBe(2_500_000);
  });

  it('forgets a weight that is older than what the book wrote since, when the tin is scanned again', async () => {
    const number = await begin();
    await see(number, tin(0));
    await count(number, tin(0), 2_400_000);
    must(await weighContainer(test.book, by('Ben'), { label: tin(0), left: 2_000_000, why: 'Poured' }));
    expect(await statuses(number)).toMatchObject({ [tin(0)]: 'changed' });
    expect(await see(number, tin(0))).toMatchObject({ thing: { status: 'here', seen: { counted: null } } });
  });

  it('keeps a weight when the tin is only scanned again', async () => {
    const number = await begin();
    await see(number, tin(0));
    await count(number, tin(0), 2_400_000);
    expect(await see(number, tin(0))).toMatchObject({ thing: { status: 'different', seen: { counted: 2_400_000 } } });
  });

  it('puts a tin the book had thrown away back with what was weighed in it, where it was found', async () => {
    must(await discard(test.book, by(), { label: tin(3), why: 'Thought it was empty' }));
    const number = await begin();
    expect(await see(number, tin(3))).toMatchObject({ thing: { status: 'back', choices: ['leave'] } });
    await count(number, tin(3), 800_000);
    for (const label of [tin(0), tin(1), tin(2), slab]) await see(number, label);
    await post(number);
    expect(await loadContainer(test.book.read, tin(3))).toMatchObject({ left: 800_000, place: 'Cabinet' });
    await proven();
  });

  it('frees a missing slab from its job, lowers what was promised of a lost tin, and names both jobs', async () => {
    const { book } = test;
    const job = async (name: string, dayOfUse: string) =>
      must(await addJob(book, by(), { name, purpose: 'client', client: '', dayOfUse: day(dayOfUse), note: '' })).jobId;
    const desk = await job('River desk', '2026-12-05');
    const bar = await job('Bar top', '2026-12-19');
    must(await givePiece(book, by(), { label: slab, act: 'promise', jobId: desk }));
    const stockId = await idOf(tin(0));
    const added = await book.read.entry.findFirstOrThrow({ where: { kind: 'job-added' }, orderBy: { id: 'desc' } });
    await book.write(async (tx) => {
      for (const [jobId, amount] of [
        [desk, 1_500_000n],
        [bar, 1_000_000n],
      ] as const) {
        await tx.promiseLine.create({ data: { entryId: added.id, jobId, stockId, delta: amount } });
        await tx.promised.create({ data: { jobId, stockId, amount } });
      }
    });
    const number = await begin();
    await see(number, tin(0));
    await count(number, tin(0), 1_800_000);
    const { broken } = await post(number);
    expect(broken.map(({ label, job: name, amount }) => ({ label, name, amount }))).toEqual([
      { label: tin(0), name: 'Bar top', amount: 700_000 },
      { label: slab, name: 'River desk', amount: 1 },
    ]);
    const promised = await book.read.promised.findMany({ orderBy: { jobId: 'asc' } });
    expect(promised.map((each) => each.amount)).toEqual([1_500_000n, 300_000n]);
    const lines = await book.read.promiseLine.aggregate({ where: { stockId }, _sum: { delta: true } });
    expect(lines._sum.delta).toBe(1_800_000n);
    expect((await loadPiece(book.read, slab))?.facts).toMatchObject({ inStock: false, promisedTo: undefined });
    await proven();
  });

  it('is refused with a plain answer where it cannot be', async () => {
    const { book } = test;
    const number = await begin();
    expect(refusedWith(await beginStocktake(book, by(), { placeLabel: shelf }))).toBe('stocktake-goes-on');
    expect(refusedWith(await beginStocktake(book, by(), { placeLabel: 'P000000' }))).toBe('not-found');
    const nothing = { stocktake: number, why: 'x', ...(await decided(number)) };
    expect(refusedWith(await postStocktake(book, by(), nothing))).toBe('nothing-seen-yet');
    await see(number, tin(0));
    expect(refusedWith(await postStocktake(book, by(), { ...nothing, why: ' ' }))).toBe('reason-needed');
    const counting = { stocktake: number, stockId: await idOf(tin(0)), grossMg: null };
    expect(refusedWith(await noteCounted(book, by(), { ...counting, counted: 5_000_001 }))).toBe('unit-does-not-fit');
    expect(refusedWith(await noteCounted(book, by(), { ...counting, counted: -1 }))).toBe('not-an-exact-amount');
    const unseen = { ...counting, stockId: await idOf(tin(1)), counted: 1 };
    expect(refusedWith(await noteCounted(book, by(), unseen))).toBe('not-seen-yet');
    must(await giveUpStocktake(book, by(), { stocktake: number }));
    expect(refusedWith(await noteSeen(book, by(), { stocktake: number, text: tin(1) }))).toBe('stocktake-closed');
    expect(refusedWith(await giveUpStocktake(book, by(), { stocktake: number }))).toBe('stocktake-closed');
    expect(refusedWith(await noteSeen(book, by(), { stocktake: 9999, text: tin(1) }))).toBe('not-found');
    await proven();
  });

  it.each(['posted', 'given up'] as const)('that was %s is not taken up again beside another walk', async (how) => {
    const { book } = test;
    const first = await begin();
    await see(first, tin(0));
    if (how === 'posted') await post(first);
    else must(await giveUpStocktake(book, by(), { stocktake: first }));
    const closed = await book.read.entry.findFirstOrThrow({ orderBy: { id: 'desc' }, select: { id: true } });
    const before = await left(tin(1));
    // A walk of a place inside it is in the way too; one of another place is not.
    const { stocktake: elsewhere } = must(await beginStocktake(book, by(), { placeLabel: barn }));
    const { stocktake: inside } = must(await beginStocktake(book, by(), { placeLabel: shelf }));
    const undo = () => reverseEntry(book, by(), { entryId: closed.id, why: 'Not done yet' });
    const refused = await undo();
    expect(refused).toMatchObject({
      error: { code: 'stocktake-goes-on', facts: { place: 'Low shelf', again: 'Cabinet' } },
    });
    if (!refused.ok) {
      expect(sayRefusal(refused.error).what).toBe(
        'A stocktake of Low shelf goes on: the one of Cabinet cannot go on again beside it.',
      );
    }
    expect(await left(tin(1))).toBe(before);
    must(await giveUpStocktake(book, by(), { stocktake: inside }));
    must(await undo());
    expect((await walk(first))?.things.length).toBe(4);
    const { open } = await listStocktakes(book);
    expect(open.map(({ stocktake }) => stocktake).sort()).toEqual([first, elsewhere].sort());
    await proven();
  });

  it('is posted once, however often the same press comes', async () => {
    const number = await begin();
    await see(number, tin(0));
    const press = { ...by(), key: 'stocktake-press-1' };
    const input = { stocktake: number, why: 'Counted.', ...(await decided(number)) };
    const first = await postStocktake(test.book, press, input);
    const again = await postStocktake(test.book, press, input);
    expect(again).toEqual({ ok: true, value: { answer: must(first), replayed: true } });
    expect(refusedWith(await postStocktake(test.book, by(), input))).toBe('stocktake-closed');
  });

  it('keeps the codes it did not know with it once it is posted', async () => {
    const number = await begin();
    await see(number, tin(0));
    await see(number, 'LOOSE-LID');
    await post(number);
    expect(await stocktakePage(test.book, number)).toMatchObject({ codes: ['LOOSE-LID'], walk: null });
  });

  it('does not prove where it is called posted and no entry posted it', async () => {
    const number = await begin();
    await test.book.write((tx) => tx.stocktake.updateMany({ data: { posted: true } }));
    const { differences } = await proveBook(test.book.read);
    expect(differences).toEqual([
      {
        rule: 'stocktakes-rest-on-entries',
        where: `stocktake ${number}`,
        says: 'is posted, and no entry closed it',
      },
    ]);
  });

  it('takes the sightings of two people at once, each thing once', async () => {
    const number = await begin();
    const everything = [tin(0), tin(1), tin(2), slab, 'LOOSE-LID'];
    const all = everything.flatMap((text) => [see(number, text, 'Ada'), see(number, text, 'Ben')]);
    await Promise.all(all);
    const now = await walk(number);
    expect(now?.things.map((each) => each.status)).toEqual(['here', 'here', 'here', 'here']);
    expect(now?.codes).toHaveLength(1);
    expect(await test.book.read.stocktakeLine.count()).toBe(5);
  });
});
