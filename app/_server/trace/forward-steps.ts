import {
  type Between,
  containersOfLots,
  cutFrom,
  jobsOfLifts,
  jobsOfPieces,
  piecesOfJobs,
  type TraceReader,
  usesIn,
} from '@/app/_server/trace/trace-steps';
import { type TraceEdge, type TraceKind, traceKey } from '@/shared/trace/trace-graph';

/** What a trace goes forward from. */
export type ForwardFrom = {
  readonly lots: readonly number[];
  readonly containers: readonly number[];
  readonly lifts: readonly number[];
  readonly jobs: readonly number[];
  readonly pieces: readonly number[];
};

/**
 * Every step forward: from lots to their containers, from containers to the lifts and jobs they went into, from lifts to
 * their jobs, from jobs to the pieces promised to them or taken for them, from pieces to what was cut out of them. One
 * small question after the other: put as one, it took the database longer to plan than to answer.
 */
export async function forwardSteps(tx: TraceReader, from: ForwardFrom): Promise<TraceEdge[]> {
  const ofLots = await containersOfLots(tx, from.lots);
  const uses = await usesIn(tx, 'container', [...from.containers, ...ofLots.map(({ toId }) => toId)]);
  const ofLifts = await jobsOfLifts(tx, from.lifts);
  const jobs = new Set([...from.jobs, ...uses.map(({ jobId }) => jobId), ...ofLifts.map(({ toId }) => toId)]);
  const given = await piecesOfJobs(tx, [...jobs]);
  const cut = await cutFrom(tx, [...new Set([...from.pieces, ...given.map(({ toId }) => toId)])]);
  const cutGiven = await jobsOfPieces(
    tx,
    cut.map(({ toId }) => toId),
  );
  return [
    ...edges('lot', 'container', ofLots),
    ...uses.flatMap(({ containerId, liftId, jobId }) =>
      liftId === null
        ? edges('container', 'job', [{ fromId: containerId, toId: jobId }])
        : [
            ...edges('container', 'lift', [{ fromId: containerId, toId: liftId }]),
            ...edges('lift', 'job', [{ fromId: liftId, toId: jobId }]),
          ],
    ),
    ...edges('lift', 'job', ofLifts),
    ...edges('job', 'piece', given),
    ...edges('piece', 'piece', cut),
    ...edges('job', 'piece', cutGiven),
  ];
}

const edges = (from: TraceKind, to: TraceKind, all: readonly Between[]): TraceEdge[] =>
  all.map(({ fromId, toId }) => ({ from: traceKey(from, fromId), to: traceKey(to, toId) }));
