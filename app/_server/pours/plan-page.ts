import { loadJob } from '@/app/_server/jobs/read-jobs';
import { readParts } from '@/app/_server/jobs/read-parts';
import { usualPart } from '@/app/_server/jobs/usual-part';
import { type NamedPiece, namedPieces } from '@/app/_server/pours/named-pieces';
import { type PourLine, readPour } from '@/app/_server/pours/read-pour';
import { readSystems } from '@/app/_server/pours/read-systems';
import { type VoidChoices, voidChoices } from '@/app/_server/pours/void-choices';
import { readClosedDays } from '@/app/_server/timeline/read-closed-days';
import type { OpenBook } from '@/prisma/open-book';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import type { ClosedDays } from '@/shared/timeline/closed-days';

export type PlanPage = {
  job: { id: number; name: string; state: string };
  pour: PourLine | undefined;
  parts: { id: number; name: string }[];
  /** The part it is for, or likeliest for; null is the whole job. */
  part: number | null;
  systems: { id: number; name: string; sheet: ResinSheet | null }[];
  choices: VoidChoices;
  /** The pieces it is to be planned for, where they were named, as they stand to the job. */
  named: NamedPiece[];
  closed: ClosedDays;
};

/** Everything the form of a pour asks the book; undefined where the job, or the pour of it, is not there. */
export async function planPage(
  book: OpenBook,
  jobId: number,
  { pourId, labels = [] }: { pourId?: number; labels?: readonly string[] } = {},
): Promise<PlanPage | undefined> {
  const [job, pour, systems, choices, named, closed] = await Promise.all([
    loadJob(book.read, jobId),
    pourId === undefined ? undefined : readPour(book.read, pourId),
    readSystems(book),
    voidChoices(book, jobId, labels),
    namedPieces(book, labels, jobId),
    readClosedDays(book.read),
  ]);
  if (!job || (pourId !== undefined && pour?.job.id !== jobId)) return undefined;
  const parts = await readParts(book.read, jobId);
  return {
    job,
    pour,
    parts: parts.map(({ id, name }) => ({ id, name })),
    part: pour ? pour.partId : await usualPart(book.read, jobId, parts),
    systems: systems.map(({ id, name, sheet }) => ({ id, name, sheet: sheet?.facts ?? null })),
    choices,
    named,
    closed,
  };
}
