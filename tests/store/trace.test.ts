import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cutPiece } from '@/app/_server/cuts/cut-piece';
import { recordFault } from '@/app/_server/faults/record-fault';
import { addJob } from '@/app/_server/jobs/add-job';
import { setStage } from '@/app/_server/jobs/set-stage';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { changeHold } from '@/app/_server/stock/change-hold';
import { givePiece } from '@/app/_server/stock/give-piece';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { holdAll } from '@/app/_server/trace/hold-all';
import { releaseAll } from '@/app/_server/trace/release-all';
import { stillHeld } from '@/app/_server/trace/still-held';
import { traceFrom } from '@/app/_server/trace/trace-from';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { TRACE_KINDS } from '@/shared/trace/trace-graph';
import { nanometres } from '@/shared/units/nanometres';
import { g } from '@/tests/support/pour-figures';
import { readyToPour } from '@/tests/support/pour-of-a-test';
import { aSlab, stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';
import { found, pouredLift, pouredTable } from '@/tests/support/trace-of-a-test';

describe('a trace', () => {
  let test: TestBook;
  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(async () => {
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    await test.remove();
  });

  const undo = (entryId: number) => reverseEntry(test.book, by(), { entryId, why: 'A mistake' });
  const holdOf = async (id: number) => (await test.book.read.stock.findUniqueOrThrow({ where: { id } })).hold;
  const anotherJob = async (name: string) =>
    must(await addJob(test.book, by(), { name, purpose: 'client', client: 'Brandt', dayOfUse: TODAY, note: '' })).jobId;
  const pull = async (label: string, jobId: number) =>
    must(
      await pullContainer(test.book, by(), {
        label,
        jobId,
        purpose: 'client',
        asked: g(100),
        dayOfUse: TODAY,
        seen: 'care',
      }),
    );
  /** Another jug of the lot, sealed. */
  const sister = async (lotId: number) => {
    const lot = await test.book.read.lot.findUniqueOrThrow({ where: { stockId: lotId } });
    const { containers } = must(
      await receiveContainers(test.book, by(), {
        productId: lot.productId,
        lotCode: lot.code ?? '',
        dates: { bestBefore: { date: day('2027-06-01'), precision: 'day', confirmed: true } },
        count: 1,
        size: 2_500_000,
        receivedOn: TODAY,
      }),
    );
    return containers[0]?.stockId ?? 0;
  };
  const cutInTwo = async (label: string, promised: boolean) => {
    const at = (y: number) => ({ x: 1_500_000, y });
    const { pieces, entryId } = must(
      await cutPiece(test.book, by(), {
        label,
        shapeId: null,
        how: { by: 'lines', lines: [{ way: 'cross', points: [at(0), at(1)], kerf: 3200 }], bands: 'kept' },
        become: [
          { as: 'slab', promised },
          { as: 'offcut', promised: false },
        ],
        why: '',
      }),
    );
    return { entryId, ids: pieces.map(({ stockId }) => stockId) };
  };

  it('from a lot goes forward by container, lift and job to the pieces promised to it', async () => {
    const table = await pouredTable(test.book);
    const from = await found(test.book, { kind: 'lot', id: table.lotA });
    expect(from).toMatchObject({
      lots: [table.lotA],
      containers: [table.aId],
      lifts: [table.liftId],
      jobs: [table.jobId],
      pieces: [table.slabId],
    });
    expect(from.edges).toEqual([
      `lot:${table.lotA}>container:${table.aId}`,
      `container:${table.aId}>lift:${table.liftId}`,
      `lift:${table.liftId}>job:${table.jobId}`,
      `job:${table.jobId}>piece:${table.slabId}`,
    ]);
    expect(from.traced?.nodes.map(({ way }) => way)).toEqual(['start', 'forward', 'forward', 'forward', 'forward']);
  });

  it('from a lift, a job or a piece goes back to both parts that went in', async () => {
    const table = await pouredTable(test.book);
    for (const start of [
      { kind: 'lift' as const, id: table.liftId },
      { kind: 'job' as const, id: table.jobId },
      { kind: 'piece' as const, id: table.slabId },
    ]) {
      const back = await found(test.book, start);
      expect(back.lots, start.kind).toEqual([table.lotA, table.lotB]);
      expect(back.containers, start.kind).toEqual([table.aId, table.bId]);
      expect(back.lifts, start.kind).toEqual([table.liftId]);
      expect(back.jobs, start.kind).toEqual([table.jobId]);
      expect(back.pieces, start.kind).toEqual([table.slabId]);
    }
  });

  it('from part A does not name the container of part B: only what went into the same lift', async () => {
    const table = await pouredTable(test.book);
    const from = await found(test.book, { kind: 'container', id: table.aId });
    expect(from.containers).toEqual([table.aId]);
    expect(from.lots).toEqual([table.lotA]);
  });

  it('names what was pulled for a job without a lift, and everything the lot went into', async () => {
    const { labels, containers } = await stocked(test.book, {
      lotCode: 'OIL-1',
      count: 2,
      product: { name: 'Plain oil', kind: 'hardwax-oil', system: undefined },
    });
    const [one, two] = [await anotherJob('Bench'), await anotherJob('Shelf')];
    await pull(labels[0] ?? '', one);
    await pull(labels[0] ?? '', one);
    await pull(labels[1] ?? '', two);
    const lotId = (await test.book.read.container.findFirstOrThrow({ where: { stockId: containers[0]?.stockId } }))
      .lotId;
    const from = await found(test.book, { kind: 'lot', id: lotId });
    expect(from.jobs).toEqual([one, two]);
    expect(from.lifts).toEqual([]);
    expect(from.edges.filter((edge) => edge.startsWith('container'))).toHaveLength(2);
    const back = await found(test.book, { kind: 'job', id: one });
    expect(back).toMatchObject({ lots: [lotId], jobs: [one] });
    // The other tin of the lot is named, not what it went into; asked for, that too.
    expect(back.containers).toHaveLength(2);
    expect((await found(test.book, { kind: 'job', id: one }, { wide: true })).jobs).toEqual([one, two]);
  });

  it('forgets what was reversed: a pull, a weighing, a cut', async () => {
    const ready = await readyToPour(test.book, { size: 10_000_000 });
    const lift = await pouredLift(test.book, ready);
    const job = await anotherJob('Undone');
    const pulled = await pull(ready.a, job);
    const start = { kind: 'container' as const, id: ready.stockA };
    expect((await found(test.book, start)).jobs).toEqual([ready.jobId, job]);
    must(await undo(pulled.entryId));
    expect((await found(test.book, start)).jobs).toEqual([ready.jobId]);
    must(await undo(lift.pouredBy));
    must(await undo(lift.weighedA));
    expect(await found(test.book, start)).toMatchObject({ jobs: [], lifts: [] });
    const back = await found(test.book, { kind: 'job', id: ready.jobId });
    expect(back.containers).not.toContain(ready.stockA);

    const { pieces } = must(await receivePieces(test.book, by(), aSlab()));
    const [slab] = pieces;
    const cut = await cutInTwo(slab?.label ?? '', false);
    const piece = { kind: 'piece' as const, id: slab?.stockId ?? 0 };
    expect((await found(test.book, piece)).pieces).toEqual([piece.id, ...cut.ids]);
    must(await undo(cut.entryId));
    expect((await found(test.book, piece)).pieces).toEqual([piece.id]);
  });

  it('follows cuts both ways, and says what became of each piece', async () => {
    const table = await pouredTable(test.book);
    const cut = await cutInTwo(table.slab, true);
    const [kept = 0, offcut = 0] = cut.ids;
    const down = await found(test.book, { kind: 'piece', id: table.slabId });
    expect(down.pieces).toEqual([table.slabId, kept, offcut]);
    expect(down.jobs).toEqual([table.jobId]);
    const states = new Map(down.traced?.nodes.map(({ key, state }) => [key, state]));
    expect(states.get(`piece:${table.slabId}`)).toBe('cut');
    expect(states.get(`piece:${offcut}`)).toBe('here');
    const up = await found(test.book, { kind: 'piece', id: offcut });
    expect(up.pieces).toEqual([table.slabId, offcut]);
    // It was cut off after the pour: the resin may be in it, though it is no job's now.
    expect(up.jobs).toEqual([table.jobId]);
    expect(up.lots).toContain(table.lotA);
    expect((await found(test.book, { kind: 'lot', id: table.lotA })).pieces).toEqual([table.slabId, kept, offcut]);
    const label = (await test.book.read.stock.findUniqueOrThrow({ where: { id: kept } })).label ?? '';
    must(await givePiece(test.book, by(), { label, act: 'take', jobId: table.jobId }));
    const ofJob = await found(test.book, { kind: 'job', id: table.jobId });
    expect(ofJob.pieces).toEqual([table.slabId, kept, offcut]);
    expect(ofJob.traced?.nodes.find(({ id, kind }) => kind === 'piece' && id === kept)?.state).toBe('taken');
  });

  it('keeps a piece that a job let go of after it was poured, and none that left before', async () => {
    const table = await pouredTable(test.book);
    const { pieces } = must(await receivePieces(test.book, by(), aSlab()));
    const [early] = pieces;
    const lot = { kind: 'lot' as const, id: table.lotA };
    // Dropping the job frees the slab; the lot still leads to it, and it back to the lot.
    must(await setStage(test.book, by(), { jobId: table.jobId, stage: 'dropped', reason: 'The client withdrew' }));
    expect(await test.book.read.stock.findUnique({ where: { id: table.slabId } })).toMatchObject({ ownerJobId: null });
    expect((await found(test.book, lot)).pieces).toEqual([table.slabId]);
    expect((await found(test.book, { kind: 'piece', id: table.slabId })).lots).toContain(table.lotA);

    const ready = await readyToPour(test.book);
    const label = early?.label ?? '';
    must(await givePiece(test.book, by(), { label, act: 'promise', jobId: ready.jobId }));
    must(await givePiece(test.book, by(), { label, act: 'free' }));
    await pouredLift(test.book, ready);
    const ofOther = await found(test.book, { kind: 'job', id: ready.jobId });
    expect(ofOther.lifts).toHaveLength(1);
    expect(ofOther.pieces).toEqual([]);
  });

  it('stops where it was told to, and says how much it left out', async () => {
    const table = await pouredTable(test.book);
    const all = await traceFrom(test.book.read, { kind: 'lot', id: table.lotA });
    expect(all?.leftOut).toBe(0);
    const some = await traceFrom(test.book.read, { kind: 'lot', id: table.lotA }, { most: 3 });
    expect(some?.nodes).toHaveLength(3);
    expect(some?.leftOut).toBe((all?.nodes.length ?? 0) - 3);
    expect(some?.edges.every(({ to }) => some.nodes.some(({ key }) => key === to))).toBe(true);
  });

  it('is nothing where there is no such thing, and a fault never recorded leads nowhere', async () => {
    for (const kind of TRACE_KINDS) {
      expect(await traceFrom(test.book.read, { kind, id: 99_999 })).toBeUndefined();
    }
  });

  describe('hold', () => {
    it('sets all that is left apart in one entry: opened, sealed sisters and wood; used up and held already are left', async () => {
      const table = await pouredTable(test.book);
      const sealed = await sister(table.lotA);
      const held = await sister(table.lotA);
      must(await changeHold(test.book, by(), { stockId: held, hold: 'quarantine', why: 'Dented' }));
      const asker = by();
      const ask = { kind: 'lot' as const, id: table.lotA, wide: false, why: 'Stays soft' };
      const answer = must(await holdAll(test.book, asker, ask));
      expect(answer.held.map(({ stockId }) => stockId).sort((a, b) => a - b)).toEqual(
        [table.aId, table.slabId, sealed].sort((a, b) => a - b),
      );
      expect(answer.lots.map(({ stockId }) => stockId)).toEqual([table.lotA]);
      expect(await Promise.all([table.lotA, table.aId, sealed, table.slabId, held, table.bId].map(holdOf))).toEqual([
        'on-hold',
        'on-hold',
        'on-hold',
        'on-hold',
        'quarantine',
        'free',
      ]);
      // The same press sent twice is one entry.
      expect(await holdAll(test.book, asker, ask)).toMatchObject({ value: { replayed: true, answer } });
      expect(refusedWith(await holdAll(test.book, by(), ask))).toBe('nothing-to-hold');
      const { entries } = await history(test.book, { stockId: sealed });
      expect(entries[0]).toMatchObject({ kind: 'trace-held', why: 'Stays soft', canReverse: true });
      expect(entries[0]?.reference).toMatch(/^lot A-\d+ of /);
    });

    it('holds from a job what its lots still have, and wide what other jobs have of them', async () => {
      const table = await pouredTable(test.book);
      const other = await anotherJob('Other table');
      await pull(table.a, other);
      const { pieces } = must(await receivePieces(test.book, by(), aSlab()));
      const wood = pieces[0]?.stockId ?? 0;
      must(await givePiece(test.book, by(), { label: pieces[0]?.label ?? '', act: 'promise', jobId: other }));
      const ask = { kind: 'job' as const, id: table.jobId, why: 'Soft' };
      const near = must(await holdAll(test.book, by(), { ...ask, wide: false }));
      expect(near.held.map(({ stockId }) => stockId)).not.toContain(wood);
      const far = must(await holdAll(test.book, by(), { ...ask, wide: true }));
      expect(far.held.map(({ stockId }) => stockId)).toEqual([wood]);
    });

    it('needs a reason, and a thing', async () => {
      const table = await pouredTable(test.book);
      const ask = { kind: 'lot' as const, id: table.lotA, wide: false };
      expect(refusedWith(await holdAll(test.book, by(), { ...ask, why: '  ' }))).toBe('reason-needed');
      expect(refusedWith(await holdAll(test.book, by(), { ...ask, id: 99_999, why: 'Soft' }))).toBe('not-found');
      expect(await holdOf(table.aId)).toBe('free');
      expect(sayRefusal({ code: 'nothing-to-hold' }).what).toContain('left free');
    });

    it('is released by a decision with its reason, but not what another decision holds since', async () => {
      const table = await pouredTable(test.book);
      const sealed = await sister(table.lotA);
      const { entryId } = must(
        await holdAll(test.book, by(), { kind: 'lot', id: table.lotA, wide: false, why: 'Stays soft' }),
      );
      must(await changeHold(test.book, by(), { stockId: sealed, hold: 'recalled', why: 'The maker wrote' }));
      expect(refusedWith(await releaseAll(test.book, by(), { entryId, why: ' ' }))).toBe('release-needs-reason');
      expect((await stillHeld(test.book.read, { entryId })).map(({ stockId }) => stockId)).toEqual([
        table.lotA,
        table.aId,
        table.slabId,
      ]);
      const asker = by();
      const released = must(await releaseAll(test.book, asker, { entryId, why: 'Test pour cured hard' }));
      expect(released).toMatchObject({ labels: { length: 2 }, lots: 1 });
      expect(await Promise.all([table.lotA, table.aId, table.slabId, sealed].map(holdOf))).toEqual([
        'free',
        'free',
        'free',
        'recalled',
      ]);
      expect(await releaseAll(test.book, asker, { entryId, why: 'Test pour cured hard' })).toMatchObject({
        value: { replayed: true },
      });
      expect(refusedWith(await releaseAll(test.book, by(), { entryId, why: 'Again' }))).toBe('nothing-to-release');
      const { entries } = await history(test.book, { stockId: table.aId });
      expect(entries[0]).toMatchObject({ kind: 'trace-released', why: 'Test pour cured hard' });
    });

    it('is undone whole by reversing it', async () => {
      const table = await pouredTable(test.book);
      const { entryId } = must(
        await holdAll(test.book, by(), { kind: 'lot', id: table.lotA, wide: false, why: 'Wrong lot' }),
      );
      must(await undo(entryId));
      expect(await Promise.all([table.lotA, table.aId, table.slabId].map(holdOf))).toEqual(['free', 'free', 'free']);
      expect(await stillHeld(test.book.read, { entryId })).toEqual([]);
    });
  });

  it('shows the faults that stand on what it found, each at the nearest thing', async () => {
    const table = await pouredTable(test.book);
    const fault = must(
      await recordFault(test.book, by(), {
        kind: 'soft-spot',
        foundOn: TODAY,
        liftId: table.liftId,
        depth: nanometres(800_000),
        note: '',
      }),
    );
    const from = await found(test.book, { kind: 'lot', id: table.lotA });
    expect(from.faults).toHaveLength(1);
    expect(from.edges).toContain(`lift:${table.liftId}>fault:${from.faults[0]}`);
    must(await undo(fault.entryId));
    expect((await found(test.book, { kind: 'lot', id: table.lotA })).faults).toEqual([]);
  });
});
