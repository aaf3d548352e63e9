import { type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import type { OpenBook, WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Purpose } from '@/shared/shelf-life/types/verdict';
import type { JobStage } from '@/shared/timeline/job-stage';

export type JobLine = {
  id: number;
  name: string;
  purpose: Purpose;
  client: string;
  dayOfUse: CalendarDate;
  state: 'open' | 'done' | 'dropped';
  note: string;
  stage: JobStage;
  /** The day it is promised for. */
  dueOn: CalendarDate | null;
  contact: string;
};

const MOST = 500;

/** Jobs by their day of use: the open ones, or all of them. */
export async function listJobs(book: OpenBook, which: 'open' | 'all'): Promise<JobLine[]> {
  const rows = await book.read.job.findMany({
    where: which === 'open' ? { state: 'open' } : {},
    orderBy: [{ dayOfUse: which === 'open' ? 'asc' : 'desc' }, { id: 'asc' }],
    take: MOST,
  });
  return rows.map(jobLine);
}

/** One job by its number, or undefined. */
export async function loadJob(tx: Pick<WriteTransaction, 'job'>, jobId: number): Promise<JobLine | undefined> {
  const row = await tx.job.findUnique({ where: { id: jobId } });
  return row ? jobLine(row) : undefined;
}

/** One job with the pieces promised to it or taken into it. */
export async function jobPage(
  book: OpenBook,
  jobId: number,
): Promise<{ job: JobLine; pieces: PieceLine[] } | undefined> {
  const row = await book.read.job.findUnique({ where: { id: jobId } });
  if (!row) return undefined;
  const pieces = await book.read.piece.findMany({
    where: { stock: { ownerJobId: jobId } },
    select: pieceSelect,
    take: 200,
  });
  return { job: jobLine(row), pieces: pieces.map(pieceLine) };
}

function jobLine(row: {
  id: number;
  name: string;
  purpose: string;
  client: string;
  dayOfUse: string;
  state: string;
  note: string;
  stage: string;
  dueOn: string | null;
  contact: string;
}): JobLine {
  return {
    id: row.id,
    name: row.name,
    purpose: row.purpose as Purpose,
    client: row.client,
    dayOfUse: row.dayOfUse as CalendarDate,
    state: row.state as JobLine['state'],
    note: row.note,
    stage: row.stage as JobStage,
    dueOn: row.dueOn as CalendarDate | null,
    contact: row.contact,
  };
}
