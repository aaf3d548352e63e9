import { forwardSteps } from '@/app/_server/trace/forward-steps';
import { type SubjectsOfFault, subjectsOfFault } from '@/app/_server/trace/subjects-of-fault';
import { subjectsOfSample } from '@/app/_server/trace/subjects-of-sample';
import {
  containersOfLots,
  cutOutOf,
  jobsOfPieces,
  lotsOfContainers,
  type TraceReader,
  type Use,
  usesIn,
} from '@/app/_server/trace/trace-steps';
import {
  idOfKey,
  kindOfKey,
  type TraceEdge,
  type TraceKey,
  type TraceKind,
  traceKey,
} from '@/shared/trace/trace-graph';

/**
 * How a thing came into the trace: it is what was asked about; it went into that; that went into it; or it is a container
 * of a lot that was found on the way back.
 */
export type Way = 'start' | 'back' | 'forward' | 'beside';

export type Walked = {
  readonly found: ReadonlyMap<TraceKey, Way>;
  readonly edges: readonly TraceEdge[];
  /** Things that were reached and had no room. */
  readonly leftOut: number;
};

/**
 * Walks the book from one thing, back to the lots, containers and pieces that went in, and forward to the lifts, jobs and
 * pieces it went into. Every read is on an index, whatever the size of the book. A container of a lot that was
 * found on the way back is taken along, and nothing that it went into: `wide` follows those lots forward too.
 */
export async function walkTrace(
  tx: TraceReader,
  start: { kind: TraceKind; id: number },
  { wide = false, most }: { wide?: boolean; most: number },
): Promise<Walked> {
  const trace = new Trace(most);
  trace.add(traceKey(start.kind, start.id), 'start');
  const seeds = await seedsOf(tx, start);
  for (const { from, to } of seeds.edges) trace.link(from, to, 'back');
  const lots = await goBack(tx, trace, seeds, wide);
  await goForward(tx, trace, seeds, wide ? lots : seeds.lot);
  return trace.walked();
}

type Seeds = Record<Exclude<TraceKind, 'fault' | 'sample'>, number[]> & {
  /** Lots a sample was mixed of: they went into it, and are not what is asked about. */
  mixed: number[];
  edges: TraceEdge[];
};

async function seedsOf(tx: TraceReader, { kind, id }: { kind: TraceKind; id: number }): Promise<Seeds> {
  const none: Seeds = { lot: [], container: [], lift: [], job: [], piece: [], mixed: [], edges: [] };
  if (kind === 'sample') {
    const { lift, mixed } = await subjectsOfSample(tx, id);
    const edges = lift.map((each) => ({ from: traceKey('lift', each), to: traceKey('sample', id) }));
    return { ...none, lift, mixed, edges };
  }
  if (kind !== 'fault') return { ...none, [kind]: [id] };
  const subjects: SubjectsOfFault = await subjectsOfFault(tx, id);
  const fault = traceKey('fault', id);
  const seen = (of: keyof SubjectsOfFault) => subjects[of].map((each) => ({ from: traceKey(of, each), to: fault }));
  return { ...none, ...subjects, edges: [...seen('lift'), ...seen('job'), ...seen('container'), ...seen('piece')] };
}

/** Answers the lots that were found. */
async function goBack(tx: TraceReader, trace: Trace, seeds: Seeds, wide: boolean): Promise<number[]> {
  const grown = await cutOutOf(tx, seeds.piece);
  for (const { fromId, toId } of grown) trace.link(traceKey('piece', fromId), traceKey('piece', toId), 'back');
  // A lift that is named says more than the job does: the other lifts of the job are not behind it.
  const jobs = [...seeds.job];
  if (seeds.lift.length === 0) {
    // What the piece was cut out of may have been poured on before it was cut.
    const whole = [...new Set([...seeds.piece, ...grown.map(({ fromId }) => fromId)])];
    for (const { fromId, toId } of await jobsOfPieces(tx, whole)) {
      trace.link(traceKey('job', fromId), traceKey('piece', toId), 'back');
      jobs.push(fromId);
    }
  }
  const uses = [...(await usesIn(tx, 'job', jobs)), ...(await usesIn(tx, 'lift', seeds.lift))];
  for (const use of uses) linkUse(trace, use, 'back');
  const containers = [...new Set([...seeds.container, ...uses.map(({ containerId }) => containerId)])];
  const lots = new Set([...seeds.lot, ...seeds.mixed]);
  for (const lot of seeds.mixed) trace.add(traceKey('lot', lot), 'back');
  for (const { fromId, toId } of await lotsOfContainers(tx, containers)) {
    trace.link(traceKey('lot', fromId), traceKey('container', toId), 'back');
    lots.add(fromId);
  }
  if (!wide) {
    const beside = [...lots].filter((lot) => !seeds.lot.includes(lot));
    for (const { fromId, toId } of await containersOfLots(tx, beside)) {
      trace.link(traceKey('lot', fromId), traceKey('container', toId), 'beside');
    }
  }
  return [...lots];
}

async function goForward(tx: TraceReader, trace: Trace, seeds: Seeds, lots: readonly number[]): Promise<void> {
  const { container: containers, lift: lifts, job: jobs, piece: pieces } = seeds;
  const steps = await forwardSteps(tx, { lots, containers, lifts, jobs, pieces });
  for (const { from, to } of steps) trace.link(from, to, 'forward');
  // The wood of the job that is asked about went into it: where it was cut from belongs to the way back.
  const own = jobs.map((id) => traceKey('job', id));
  const given = steps.flatMap(({ from, to }) => (own.includes(from) ? [idOfKey(to)] : []));
  for (const { fromId, toId } of await cutOutOf(tx, given)) {
    trace.link(traceKey('piece', fromId), traceKey('piece', toId), 'back');
  }
}

function linkUse(trace: Trace, { containerId, liftId, jobId }: Use, way: Way): void {
  const container = traceKey('container', containerId);
  const job = traceKey('job', jobId);
  if (liftId === null) {
    trace.link(container, job, way);
    return;
  }
  trace.link(container, traceKey('lift', liftId), way);
  trace.link(traceKey('lift', liftId), job, way);
}

class Trace {
  private readonly found = new Map<TraceKey, Way>();
  private readonly edges = new Map<string, TraceEdge>();
  private readonly out = new Set<TraceKey>();

  constructor(private readonly most: number) {}

  add(key: TraceKey, way: Way): boolean {
    if (this.found.has(key)) return true;
    if (this.found.size >= this.most) {
      this.out.add(key);
      return false;
    }
    this.found.set(key, way);
    return true;
  }

  /** Both ends come in; where one has no room the line is left out with it. */
  link(from: TraceKey, to: TraceKey, way: Way): void {
    // A job reached from its lift on the way back is where that went, not what went in.
    const wayOf = (key: TraceKey) => (way === 'back' && kindOfKey(key) === 'job' ? 'forward' : way);
    const isIn = [this.add(from, wayOf(from)), this.add(to, wayOf(to))];
    if (isIn.every(Boolean)) this.edges.set(`${from}>${to}`, { from, to });
  }

  walked(): Walked {
    return { found: this.found, edges: [...this.edges.values()], leftOut: this.out.size };
  }
}
