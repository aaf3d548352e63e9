import { loadJob } from '@/app/_server/jobs/read-jobs';
import { isBegun } from '@/app/_server/pours/lift-rows';
import { type PourLine, readPour } from '@/app/_server/pours/read-pour';
import { readSystems } from '@/app/_server/pours/read-systems';
import { type VoidChoices, voidChoices } from '@/app/_server/pours/void-choices';
import { readClosedDays } from '@/app/_server/timeline/read-closed-days';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { PourAsk } from '@/shared/pour/plan-pour';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import type { ClosedDays } from '@/shared/timeline/closed-days';
import { nanometres } from '@/shared/units/nanometres';

export type PlanPage = {
  job: { id: number; name: string; state: string };
  pour: PourLine | undefined;
  /** What was begun of it. */
  poured: PourAsk['poured'];
  systems: { id: number; name: string; sheet: ResinSheet | null }[];
  choices: VoidChoices;
  closed: ClosedDays;
};

/** Everything the form of a pour asks the book; undefined where the job, or the pour of it, is not there. */
export async function planPage(book: OpenBook, jobId: number, pourId?: number): Promise<PlanPage | undefined> {
  const [job, pour, systems, choices, closed] = await Promise.all([
    loadJob(book.read, jobId),
    pourId === undefined ? undefined : readPour(book.read, pourId),
    readSystems(book),
    voidChoices(book, jobId),
    readClosedDays(book.read),
  ]);
  if (!job || (pourId !== undefined && pour?.job.id !== jobId)) return undefined;
  return {
    job,
    pour,
    poured: pour && pouredOf(pour),
    systems: systems.map(({ id, name, sheet }) => ({ id, name, sheet: sheet?.facts ?? null })),
    choices,
    closed,
  };
}

/** What of a pour was begun and stays whatever is planned anew: how many lifts, how deep, and when the last. */
export function pouredOf({ lifts }: Pick<PourLine, 'lifts'>): PourAsk['poured'] {
  const stays = lifts.filter(isBegun);
  if (stays.length === 0) return undefined;
  const days = stays.map(({ day, poured }) => poured?.on ?? day).sort();
  return {
    lifts: stays.filter(({ nr }) => nr > 0).length,
    depth: nanometres(stays.reduce((sum, { depth }) => sum + depth, 0)),
    last: days.at(-1) as CalendarDate,
  };
}
