import { type KeptPlan, readPlan } from '@/app/_server/pours/kept-plan';
import { type LiftLine, readLifts } from '@/app/_server/pours/lift-rows';
import { STANDS } from '@/app/_server/timeline/standing';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Purpose } from '@/shared/shelf-life/types/verdict';

export type PourLine = {
  id: number;
  name: string;
  job: { id: number; name: string; purpose: Purpose; state: string };
  system: { id: number; name: string };
  partId: number | null;
  /** The name of that part; null where it is poured for the whole job. */
  part: string | null;
  kept: KeptPlan;
  lifts: LiftLine[];
  /** The day of its last lift: what is weighed out is judged for it. */
  lastLift: CalendarDate;
  demould: { day: CalendarDate; doneOn: CalendarDate | null } | null;
  cure: { day: CalendarDate; doneOn: CalendarDate | null } | null;
};

type Reader = Pick<WriteTransaction, 'pour' | 'lift' | 'step'>;

/** A pour that stands, with its lifts and days; undefined where it is not in the book, or was taken off. */
export async function readPour(tx: Reader, pourId: number): Promise<PourLine | undefined> {
  const row = await tx.pour.findFirst({
    where: { id: pourId, ...STANDS },
    select: {
      id: true,
      name: true,
      partId: true,
      part: { select: { name: true } },
      plan: true,
      job: { select: { id: true, name: true, purpose: true, state: true } },
      system: { select: { id: true, name: true } },
      steps: {
        where: { kind: { in: ['demould', 'cure'] }, ...STANDS },
        select: { kind: true, day: true, doneOn: true, doneBy: { select: { reversedBy: { select: { id: true } } } } },
      },
    },
  });
  if (!row) return undefined;
  const lifts = await readLifts(tx, pourId);
  const after = (kind: string) => {
    const step = row.steps.find((each) => each.kind === kind);
    if (!step) return null;
    const isDone = step.doneBy !== null && step.doneBy.reversedBy === null;
    return { day: step.day as CalendarDate, doneOn: (isDone ? step.doneOn : null) as CalendarDate | null };
  };
  const days = lifts.map(({ day, poured }) => poured?.on ?? day);
  return {
    id: row.id,
    name: row.name,
    partId: row.partId,
    part: row.part?.name ?? null,
    job: { ...row.job, purpose: row.job.purpose as Purpose },
    system: row.system,
    kept: readPlan(row.plan),
    lifts,
    lastLift: [...days].sort().at(-1) ?? ('' as CalendarDate),
    demould: after('demould'),
    cure: after('cure'),
  };
}

/** The pours of a job that stand, as they were planned. */
export async function poursOfJob(tx: Reader, jobId: number): Promise<PourLine[]> {
  const rows = await tx.pour.findMany({ where: { jobId, ...STANDS }, orderBy: { id: 'asc' }, select: { id: true } });
  const pours = await Promise.all(rows.map(({ id }) => readPour(tx, id)));
  return pours.filter((pour) => pour !== undefined);
}

/** The pour that took the place of one that was planned anew, or undefined. */
export async function pourInstead(tx: Pick<Reader, 'pour'>, pourId: number): Promise<number | undefined> {
  const row = await tx.pour.findUnique({ where: { id: pourId }, select: { removedById: true } });
  if (!row?.removedById) return undefined;
  const next = await tx.pour.findFirst({
    where: { entryId: row.removedById, entry: { reversedBy: null } },
    select: { id: true },
  });
  return next?.id;
}
