import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { seenOnSample } from '@/app/_server/faults/seen-on-sample';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addPlace } from '@/app/_server/places/add-place';
import { keepSample } from '@/app/_server/samples/keep-sample';
import { lookAtSample } from '@/app/_server/samples/look-at-sample';
import { sampleGone } from '@/app/_server/samples/sample-gone';
import { recordInspection } from '@/app/_server/stock/record-inspection';
import { holdAll } from '@/app/_server/trace/hold-all';
import { readTraceStart } from '@/app/_server/trace/read-trace-start';
import { traceFrom } from '@/app/_server/trace/trace-from';
import { whatBearsOn } from '@/app/_server/trace/what-bears-on';
import { recordTreatment } from '@/app/_server/treatments/record-treatment';
import { sayBearings } from '@/app/(shop)/trace/say-bearing';
import { sayNode } from '@/app/(shop)/trace/say-node';
import { by, day, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';
import { found, pouredLift, pouredTable } from '@/tests/support/trace-of-a-test';

const SAY = { prefer: 'metric', order: 'day-first', today: TODAY } as const;

describe('kept samples in a trace', () => {
  let test: TestBook;
  let shelf = '';
  beforeAll(async () => {
    test = await freshBook();
    shelf = must(await addPlace(test.book, by(), { name: 'Sample shelf', kind: 'shelf' })).label;
  });
  afterAll(async () => {
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    await test.remove();
  });

  const undo = async (entryId: number) => must(await reverseEntry(test.book, by(), { entryId, why: 'A mistake' }));
  const newest = async (kind: string) =>
    (await test.book.read.entry.findFirstOrThrow({ where: { kind, reversedBy: null }, orderBy: { id: 'desc' } })).id;
  const keep = async (of: { liftId?: number; lotAId?: number; lotBId?: number }, name = 'Rim offcut') =>
    must(
      await keepSample(test.book, by(), {
        name,
        placeLabel: shelf,
        madeOn: day('2026-11-20'),
        lookOn: day('2026-12-20'),
        note: '',
        ...of,
      }),
    ).sampleId;
  const node = async (start: Parameters<typeof traceFrom>[1], sampleId: number) => {
    const traced = await traceFrom(test.book.read, start);
    const one = traced?.nodes.find(({ kind, id }) => kind === 'sample' && id === sampleId);
    if (!one) throw new Error('The sample is not in the trace.');
    return sayNode(one, SAY);
  };

  it('are found from the lot, the container, the lift, the job and the piece, each once, at their lift', async () => {
    const table = await pouredTable(test.book);
    const sample = await keep({ liftId: table.liftId });
    for (const start of [
      { kind: 'lot' as const, id: table.lotA },
      { kind: 'lot' as const, id: table.lotB },
      { kind: 'container' as const, id: table.aId },
      { kind: 'lift' as const, id: table.liftId },
      { kind: 'job' as const, id: table.jobId },
      { kind: 'piece' as const, id: table.slabId },
    ]) {
      const { samples, edges } = await found(test.book, start);
      expect(samples, start.kind).toEqual([sample]);
      expect(
        edges.filter((edge) => edge.includes('sample')),
        start.kind,
      ).toEqual([`lift:${table.liftId}>sample:${sample}`]);
    }
    expect(await node({ kind: 'lot', id: table.lotA }, sample)).toMatchObject({
      title: 'Rim offcut',
      state: 'look 20 Dec',
      where: 'Sample shelf',
      href: `/samples?one=${sample}`,
      isGone: false,
    });
  });

  it('a sample of another pour of the same lot is reached with that pour only', async () => {
    const table = await pouredTable(test.book);
    const other = await pouredLift(test.book, table, 'Second river');
    const [own, others] = [await keep({ liftId: table.liftId }), await keep({ liftId: other.liftId })];
    expect((await found(test.book, { kind: 'lift', id: table.liftId })).samples).toEqual([own]);
    expect((await found(test.book, { kind: 'lift', id: table.liftId }, { wide: true })).samples).toEqual([own, others]);
  });

  it('a trace can begin at one: back to both lots and their jugs, forward to the job and its wood', async () => {
    const table = await pouredTable(test.book);
    const sample = await keep({ liftId: table.liftId });
    expect(await readTraceStart(test.book.read, 'sample', String(sample))).toEqual({ kind: 'sample', id: sample });
    const from = await found(test.book, { kind: 'sample', id: sample });
    expect(from).toMatchObject({
      lots: [table.lotA, table.lotB],
      containers: [table.aId, table.bId],
      lifts: [table.liftId],
      jobs: [table.jobId],
      pieces: [table.slabId],
      samples: [sample],
    });
    expect(from.traced?.start).toMatchObject({ kind: 'sample', title: 'Rim offcut', way: 'start' });
    expect(new Set(from.edges).size).toBe(from.edges.length);
    expect(from.edges).toContain(`lift:${table.liftId}>sample:${sample}`);
    expect(await traceFrom(test.book.read, { kind: 'sample', id: 99_999 })).toBeUndefined();
  });

  it('one mixed of two lots in a cup hangs on the lots, and leads to their jugs, wide to every job of them', async () => {
    const table = await pouredTable(test.book);
    const cup = await keep({ lotAId: table.lotA, lotBId: table.lotB }, 'Test cup');
    const from = await found(test.book, { kind: 'sample', id: cup });
    expect(from).toMatchObject({ lots: [table.lotA, table.lotB], containers: [table.aId, table.bId], jobs: [] });
    expect(from.edges).toContain(`lot:${table.lotA}>sample:${cup}`);
    expect(from.edges).toContain(`lot:${table.lotB}>sample:${cup}`);
    expect((await found(test.book, { kind: 'sample', id: cup }, { wide: true })).jobs).toEqual([table.jobId]);
    expect((await found(test.book, { kind: 'lot', id: table.lotB })).samples).toEqual([cup]);
    expect((await found(test.book, { kind: 'container', id: table.bId })).samples).toEqual([cup]);
  });

  it('one whose weighing was undone is still of the lots that were noted with it', async () => {
    const table = await pouredTable(test.book);
    const sample = await keep({ liftId: table.liftId });
    await undo(table.pouredBy);
    await undo(table.weighedA);
    const from = await found(test.book, { kind: 'lot', id: table.lotA });
    expect([from.lifts, from.samples]).toEqual([[], [sample]]);
    expect(from.edges).toContain(`lot:${table.lotA}>sample:${sample}`);
  });

  it('say what the newest look found, that they are gone, and are left out when they were never kept', async () => {
    const table = await pouredTable(test.book);
    const sample = await keep({ liftId: table.liftId });
    const start = { kind: 'lot' as const, id: table.lotA };
    const look = { sampleId: sample, lookedOn: TODAY, note: 'Takes a nail' };
    must(await lookAtSample(test.book, by(), { ...look, result: 'sound', nextOn: day('2027-01-20') }));
    must(await lookAtSample(test.book, by(), { ...look, result: 'soft' }));
    expect((await node(start, sample)).state).toBe('found soft, not to be looked at again');
    await undo(await newest('sample-looked'));
    expect((await node(start, sample)).state).toBe('found sound, look 20 Jan 2027');
    must(await sampleGone(test.book, by(), { sampleId: sample, why: 'Swept away' }));
    expect(await node(start, sample)).toMatchObject({ state: 'found sound, gone', where: '', isGone: true });
    await undo(await newest('sample-gone'));
    expect((await node(start, sample)).isGone).toBe(false);
    await undo(await newest('sample-looked'));
    await undo(await newest('sample-kept'));
    expect((await found(test.book, start)).samples).toEqual([]);
    expect((await traceFrom(test.book.read, { kind: 'sample', id: sample }))?.start.state).toBe('undone');
  });

  it('a bad look leads to a fault of the lift, and to a hold on the lots with what is left', async () => {
    const table = await pouredTable(test.book);
    const sample = await keep({ liftId: table.liftId });
    expect(await seenOnSample(test.book, sample)).toBeUndefined();
    const look = { sampleId: sample, lookedOn: TODAY, result: 'cracked' as const, note: 'Across the rim' };
    must(await lookAtSample(test.book, by(), look));
    expect(await seenOnSample(test.book, sample)).toEqual({
      liftId: table.liftId,
      result: 'cracked',
      note: 'Seen on the sample Rim offcut. Across the rim',
    });
    const ask = { kind: 'sample' as const, id: sample, wide: false, why: 'The sample cracked' };
    const { entryId, lots, held } = must(await holdAll(test.book, by(), ask));
    expect(lots.map(({ stockId }) => stockId)).toEqual([table.lotA, table.lotB]);
    expect(held.map(({ stockId }) => stockId)).toEqual([table.aId, table.bId, table.slabId]);
    const { reference } = await test.book.read.entry.findUniqueOrThrow({ where: { id: entryId } });
    expect(reference).toBe('the sample Rim offcut');
  });

  it('stand beside what was tried and done: tests of the lots, treatments of the jugs, newest first', async () => {
    const table = await pouredTable(test.book);
    const tried = { kind: 'test-pour' as const, method: '', note: 'Cup' };
    must(
      await recordInspection(test.book, by(), {
        ...tried,
        lotId: table.lotA,
        pairLotId: table.lotB,
        madeOn: day('2026-11-24'),
        passed: false,
        result: 'Tacky',
      }),
    );
    must(
      await recordInspection(test.book, by(), {
        ...tried,
        kind: 'inspection',
        lotId: table.lotA,
        containerLabel: table.a,
        madeOn: TODAY,
        passed: true,
      }),
    );
    must(
      await recordTreatment(test.book, by(), { label: table.a, kind: 'stirred', doneOn: TODAY, note: 'Ten minutes' }),
    );
    const said = async (start: Parameters<typeof traceFrom>[1]) => {
      const traced = await traceFrom(test.book.read, start);
      return sayBearings(await whatBearsOn(test.book, traced?.nodes ?? []), SAY);
    };
    const notes = await said({ kind: 'lot', id: table.lotA });
    expect(notes.get(`lot:${table.lotA}`)).toMatchObject([
      {
        words: expect.stringMatching(/^Test pour failed, 24 Nov, together with .*, lot B-\d+\. Tacky$/),
        isBad: true,
      },
    ]);
    expect(notes.get(`container:${table.aId}`)?.map(({ words }) => words)).toEqual([
      'Inspection passed, 25 Nov',
      'Stirred, 25 Nov: Ten minutes',
    ]);
    await undo(await newest('treated'));
    expect((await said({ kind: 'job', id: table.jobId })).get(`container:${table.aId}`)).toHaveLength(1);
    expect((await said({ kind: 'container', id: table.bId })).get(`container:${table.bId}`)).toBeUndefined();
  });
});
