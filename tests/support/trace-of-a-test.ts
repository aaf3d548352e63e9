import { pourLift } from '@/app/_server/pours/pour-lift';
import { readPour } from '@/app/_server/pours/read-pour';
import { weighOutForLift } from '@/app/_server/pours/weigh-out';
import { givePiece } from '@/app/_server/stock/give-piece';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { type TraceStart, traceFrom } from '@/app/_server/trace/trace-from';
import type { OpenBook } from '@/prisma/open-book';
import type { TraceKind } from '@/shared/trace/trace-graph';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import { planned, readyToPour } from '@/tests/support/pour-of-a-test';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, must } from '@/tests/support/test-book';

type Ready = Awaited<ReturnType<typeof readyToPour>>;

/** Plans a pour, weighs its first lift out of the two containers and pours it. */
export async function pouredLift(book: OpenBook, ready: Pick<Ready, 'jobId' | 'systemId' | 'a' | 'b'>, name = 'River') {
  const { pourId } = await planned(book, ready, { name });
  const pour = await readPour(book.read, pourId);
  const lift = pour?.lifts[0];
  const batch = lift?.batches[0];
  if (!lift || !batch) throw new Error('The plan has no lift.');
  const slot = { pourId, nr: lift.nr, batch: 1, seen: 'care' as const };
  const a = must(await weighOutForLift(book, by(), { ...slot, part: 'A', label: ready.a, mass: batch.a }));
  must(await weighOutForLift(book, by(), { ...slot, part: 'B', label: ready.b, mass: batch.b }));
  const poured = must(
    await pourLift(book, by(), { pourId, nr: lift.nr, room: tenthsCelsius(210), note: '', reason: '' }),
  );
  return { pourId, liftId: lift.id, pouredBy: poured.entryId, weighedA: a.entryId };
}

/** A client's table: both parts on hand, one lift poured, and a slab promised to it. */
export async function pouredTable(book: OpenBook) {
  const ready = await readyToPour(book, { size: 10_000_000 });
  const lift = await pouredLift(book, ready);
  const { pieces } = must(await receivePieces(book, by(), aSlab()));
  const slab = pieces[0]?.label ?? '';
  must(await givePiece(book, by(), { label: slab, act: 'promise', jobId: ready.jobId }));
  const idOf = async (label: string) => (await book.read.stock.findUniqueOrThrow({ where: { label } })).id;
  const lotOf = async (label: string) =>
    (await book.read.container.findFirstOrThrow({ where: { stock: { label } } })).lotId;
  return {
    ...ready,
    ...lift,
    slab,
    slabId: await idOf(slab),
    aId: await idOf(ready.a),
    bId: await idOf(ready.b),
    lotA: await lotOf(ready.a),
    lotB: await lotOf(ready.b),
  };
}

/** What a trace found, kind by kind, as numbers. */
export async function found(book: OpenBook, start: TraceStart, more?: Parameters<typeof traceFrom>[2]) {
  const traced = await traceFrom(book.read, start, more);
  const of = (kind: TraceKind) =>
    (traced?.nodes ?? [])
      .filter((node) => node.kind === kind)
      .map(({ id }) => id)
      .sort((a, b) => a - b);
  return {
    lots: of('lot'),
    containers: of('container'),
    lifts: of('lift'),
    samples: of('sample'),
    jobs: of('job'),
    pieces: of('piece'),
    faults: of('fault'),
    edges: (traced?.edges ?? []).map(({ from, to }) => `${from}>${to}`),
    traced,
  };
}
