import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { faultsOf } from '@/app/_server/faults/faults-of';
import { recordFault, recordSentFault } from '@/app/_server/faults/record-fault';
import { settleFault } from '@/app/_server/faults/settle-fault';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { nanometres } from '@/shared/units/nanometres';
import { by, day, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';
import { found, pouredTable } from '@/tests/support/trace-of-a-test';

describe('a fault', () => {
  let test: TestBook;
  let table: Awaited<ReturnType<typeof pouredTable>>;
  const data = process.env.FLITCHBOOK_DATA;
  beforeAll(async () => {
    test = await freshBook();
    process.env.FLITCHBOOK_DATA = test.files.folder;
    table = await pouredTable(test.book);
  });
  afterAll(async () => {
    expect((await proveBook(test.book.read, test.files.photos)).differences).toEqual([]);
    if (data === undefined) delete process.env.FLITCHBOOK_DATA;
    else process.env.FLITCHBOOK_DATA = data;
    await test.remove();
  });

  const soft = { kind: 'soft-spot' as const, foundOn: TODAY, note: '' };
  const record = async (more: Partial<Parameters<typeof recordFault>[2]>) => {
    const answer = must(await recordFault(test.book, by(), { ...soft, ...more }));
    const { id } = await test.book.read.fault.findFirstOrThrow({ where: { entryId: answer.entryId } });
    return { ...answer, id };
  };
  const undo = async (entryId: number) => must(await reverseEntry(test.book, by(), { entryId, why: 'A mistake' }));

  it('is kept with its lift, its place on the drawing and its depth, and is of the lift’s job', async () => {
    const place = { x: 1_200_000, y: 20_000 };
    const { id, jobId, entryId } = await record({
      liftId: table.liftId,
      label: table.slab,
      place,
      depth: nanometres(793_750),
      note: 'Near the knot',
    });
    expect(jobId).toBe(table.jobId);
    const [line] = await faultsOf(test.book.read, { id });
    expect(line).toMatchObject({
      kind: 'soft-spot',
      place,
      depth: 793_750,
      label: table.slab,
      lift: { nr: 1, pour: 'River' },
      settled: null,
    });
    const { entries } = await history(test.book, { stockId: table.slabId });
    expect(entries[0]).toMatchObject({ kind: 'fault-found', canReverse: true, job: { id: table.jobId } });
    expect(entries[0]?.why).toMatch(/^Soft spot, lift 1 of River, .*\. Near the knot$/);
    // What the nearest thing is leads back: the lift, and with it both lots.
    const traced = await found(test.book, { kind: 'fault', id });
    expect(traced).toMatchObject({ lots: [table.lotA, table.lotB], lifts: [table.liftId], pieces: [table.slabId] });
    await undo(entryId);
    expect(await faultsOf(test.book.read, { id })).toEqual([]);
  });

  it('of a piece is of the job the piece is promised to; of a tin it is of the tin', async () => {
    const onPiece = await record({ label: table.slab });
    expect(onPiece.jobId).toBe(table.jobId);
    expect((await faultsOf(test.book.read, { stockId: table.slabId })).map(({ id }) => id)).toContain(onPiece.id);
    const onTin = await record({ kind: 'cloudy', label: table.a });
    expect(onTin.jobId).toBeNull();
    expect(await found(test.book, { kind: 'fault', id: onTin.id })).toMatchObject({
      lots: [table.lotA],
      containers: [table.aId],
      lifts: [table.liftId],
      jobs: [table.jobId],
    });
  });

  it('of a whole pour leads to what went into its lifts', async () => {
    const { id, jobId } = await record({ pourId: table.pourId });
    expect(jobId).toBe(table.jobId);
    expect((await found(test.book, { kind: 'fault', id })).lots).toEqual([table.lotA, table.lotB]);
  });

  it('stands until it is settled, once, with what was done; reversing that opens it again', async () => {
    const { id } = await record({ jobId: table.jobId });
    expect(refusedWith(await settleFault(test.book, by(), { faultId: id, how: ' ' }))).toBe('reason-needed');
    const asker = by();
    const how = 'Cut out and filled, set four days';
    const settled = must(await settleFault(test.book, asker, { faultId: id, how }));
    expect(await settleFault(test.book, asker, { faultId: id, how })).toMatchObject({ value: { replayed: true } });
    const [line] = await faultsOf(test.book.read, { id });
    expect(line?.settled).toEqual({ who: 'Ada', how });
    expect((await faultsOf(test.book.read, { jobId: table.jobId })).at(-1)?.id).toBe(id);
    expect(refusedWith(await settleFault(test.book, by(), { faultId: id, how }))).toBe('fault-settled-already');
    await undo(settled.entryId);
    expect((await faultsOf(test.book.read, { id }))[0]?.settled).toBeNull();
  });

  it('that was taken back cannot be settled', async () => {
    const { id, entryId } = await record({ jobId: table.jobId });
    await undo(entryId);
    expect(refusedWith(await settleFault(test.book, by(), { faultId: id, how: 'Filled' }))).toBe('fault-gone');
  });

  it('keeps its photo with the piece it shows', async () => {
    const png = await sharp({ create: { width: 40, height: 30, channels: 3, background: '#b08050' } })
      .png()
      .toBuffer();
    const photo = new Blob([new Uint8Array(png)], { type: 'image/png' });
    const answer = must(await recordSentFault(test.book, by(), { ...soft, label: table.slab, photo }));
    const [line] = await faultsOf(test.book.read, { stockId: table.slabId });
    expect(line?.photo).toMatch(/\.\w+$/);
    const row = await test.book.read.photo.findFirstOrThrow({ where: { entryId: answer.entryId } });
    expect(row).toMatchObject({ stockId: table.slabId, file: line?.photo });
    const ofJob = recordSentFault(test.book, by(), { ...soft, jobId: table.jobId, photo });
    expect(refusedWith(await ofJob)).toBe('photo-needs-a-thing');
  });

  it('is refused in plain words where it cannot be so', async () => {
    const refused = async (more: Partial<Parameters<typeof recordFault>[2]>) => {
      const code = refusedWith(await recordFault(test.book, by(), { ...soft, ...more }));
      expect(sayRefusal({ code: code as 'not-found' }).what).toMatch(/\w/);
      return code;
    };
    expect(await refused({})).toBe('fault-needs-a-thing');
    expect(await refused({ jobId: table.jobId, foundOn: day('2026-11-26') })).toBe('found-in-the-future');
    expect(await refused({ jobId: table.jobId, kind: 'other', note: ' ' })).toBe('fault-needs-words');
    expect(await refused({ jobId: 9999 })).toBe('not-found');
    expect(await refused({ liftId: 9999 })).toBe('not-found');
    expect(await refused({ label: 'SXXXXXX' })).toBe('not-found');
    const place = { x: 9_000_000, y: 0 };
    expect(await refused({ label: table.slab, place })).toBe('mark-off-the-wood');
    expect(await refused({ jobId: table.jobId, place })).toBe('mark-off-the-wood');
    expect(await refused({ jobId: table.jobId, depth: nanometres(0) })).toBe('outside-range');
    const other = await pouredTable(test.book);
    expect(await refused({ jobId: table.jobId, liftId: other.liftId })).toBe('lift-of-another-job');
  });

  it('that names nothing, another job’s pour, or is settled by any other entry is told by the proof', async () => {
    const ids = [
      await record({ jobId: table.jobId }),
      await record({ pourId: table.pourId }),
      await record({ label: table.a }),
    ];
    const [bare, pour, early] = ids.map(({ id }) => id);
    const { differences } = await test.book.write(async (tx) => {
      const { id: other } = await tx.job.findFirstOrThrow({ where: { id: { not: table.jobId } } });
      await tx.fault.update({ where: { id: bare ?? 0 }, data: { jobId: null } });
      await tx.fault.update({ where: { id: pour ?? 0 }, data: { jobId: other } });
      await tx.fault.update({ where: { id: early ?? 0 }, data: { settledById: 1 } });
      const proof = await proveBook(tx);
      await tx.fault.update({ where: { id: bare ?? 0 }, data: { jobId: table.jobId } });
      await tx.fault.update({ where: { id: pour ?? 0 }, data: { jobId: table.jobId } });
      await tx.fault.update({ where: { id: early ?? 0 }, data: { settledById: null } });
      return proof;
    });
    expect(differences.map(({ rule, where }) => [rule, where])).toEqual([
      ['faults-are-of-something', `fault ${bare}`],
      ['faults-are-of-something', `fault ${pour}`],
      ['faults-are-settled-after', `fault ${early}`],
    ]);
  });
});
