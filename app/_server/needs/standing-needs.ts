import { daysThatCount } from '@/app/_server/needs/days-that-count';
import { STANDS } from '@/app/_server/timeline/standing';
import type { Prisma } from '@/prisma/generated/client';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Purpose } from '@/shared/shelf-life/types/verdict';
import type { StockUnit } from '@/shared/units/stock-unit';

/** What of wood is looked for; '' and null where anything will do. Lengths in nanometres. */
type WoodWanted = {
  species: string;
  form: string;
  lengthNm: number | null;
  widthNm: number | null;
  thicknessNm: number | null;
};

/** A need that stands, with the days it is for. */
export type NeedFacts = {
  id: number;
  jobId: number;
  job: string;
  purpose: Purpose;
  /** The job is agreed, and not yet over: what it needs is to be kept for it. */
  firm: boolean;
  kind: 'wood' | 'material';
  /** It is used on this day, and has to be here by then. */
  on: CalendarDate;
  /** What is used has to be good to this day: the last lift of its pour, the last coat of its finish, else `on`. */
  goodTo: CalendarDate;
  /** The step whose day it is; null where it is the job's day of use. */
  step: string | null;
  stepId: number | null;
  stepDone: boolean;
  liftId: number | null;
  liftPoured: boolean;
  part: string | null;
  partId: number | null;
  surface: string;
  note: string;
  unit: StockUnit;
  amount: number;
  product: { id: number; name: string } | null;
  system: { id: number; name: string; part: 'A' | 'B' } | null;
  wood: WoodWanted | null;
};

const FIRM = new Set(['agreed', 'making', 'curing', 'ready']);

/** The needs that stand of the jobs that fit, by their days. */
export async function standingNeeds(
  tx: Pick<WriteTransaction, 'need' | 'step'>,
  where: Prisma.NeedWhereInput,
): Promise<NeedFacts[]> {
  const rows = await tx.need.findMany({
    where: { AND: [where, STANDS] },
    orderBy: { id: 'asc' },
    select: {
      id: true,
      jobId: true,
      kind: true,
      species: true,
      form: true,
      lengthNm: true,
      widthNm: true,
      thicknessNm: true,
      resinPart: true,
      unit: true,
      amount: true,
      surface: true,
      note: true,
      liftId: true,
      partId: true,
      stepId: true,
      job: { select: { name: true, purpose: true, dayOfUse: true, stage: true, state: true } },
      part: { select: { name: true } },
      product: { select: { id: true, name: true } },
      system: { select: { id: true, name: true } },
      lift: {
        select: { pour: { select: { name: true } }, pouredBy: { select: { reversedBy: { select: { id: true } } } } },
      },
      step: {
        select: {
          name: true,
          day: true,
          doneBy: { select: { reversedBy: { select: { id: true } } } },
          entry: { select: { reversedBy: { select: { id: true } } } },
          removedBy: { select: { reversedBy: { select: { id: true } } } },
        },
      },
    },
  });
  const stands = (entry: { reversedBy: unknown } | null | undefined) => Boolean(entry) && entry?.reversedBy === null;
  const counting = await daysThatCount(tx, [...new Set(rows.flatMap(({ jobId, stepId }) => (stepId ? [jobId] : [])))]);
  const needs = rows.map((row): NeedFacts => {
    const step = row.step && stands(row.step.entry) && !stands(row.step.removedBy) ? row.step : null;
    const on = (step?.day ?? row.job.dayOfUse) as CalendarDate;
    return {
      id: row.id,
      jobId: row.jobId,
      job: row.job.name,
      purpose: row.job.purpose as Purpose,
      firm: row.job.state === 'open' && FIRM.has(row.job.stage),
      kind: row.kind as NeedFacts['kind'],
      on,
      goodTo: (step && row.stepId !== null && counting.get(row.stepId)) || on,
      step: step?.name ?? null,
      stepId: step ? row.stepId : null,
      stepDone: stands(step?.doneBy),
      liftId: row.liftId,
      liftPoured: stands(row.lift?.pouredBy),
      part: row.part?.name ?? null,
      partId: row.partId,
      // A pour that was planned anew may have another name: what was begun of it is one surface with the rest.
      surface: row.lift?.pour.name ?? row.surface,
      note: row.note,
      unit: row.unit as StockUnit,
      amount: Number(row.amount),
      product: row.product,
      system: row.system && { ...row.system, part: row.resinPart as 'A' | 'B' },
      wood:
        row.kind === 'wood'
          ? {
              species: row.species,
              form: row.form,
              lengthNm: numberOf(row.lengthNm),
              widthNm: numberOf(row.widthNm),
              thicknessNm: numberOf(row.thicknessNm),
            }
          : null,
    };
  });
  return needs.sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.id - b.id));
}

const numberOf = (value: bigint | null) => (value === null ? null : Number(value));
