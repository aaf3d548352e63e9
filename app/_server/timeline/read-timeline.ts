import type { JobLine } from '@/app/_server/jobs/read-jobs';
import { judgeStock, type StockVerdict } from '@/app/_server/timeline/judge-stock';
import { readSteps, type StepLine } from '@/app/_server/timeline/read-steps';
import { type StockOfJob, stockOfJob } from '@/app/_server/timeline/stock-of-job';
import { timelineFactsOf } from '@/app/_server/timeline/timeline-facts-of';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { judgeTimeline, type StepVerdict } from '@/shared/timeline/judge-timeline';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';

/** A job's time line: its steps, what they are judged by, and the stock that hangs on them. */
export type Timeline = {
  steps: StepLine[];
  facts: TimelineFacts;
  stock: StockOfJob;
  verdicts: StepVerdict[];
  stockVerdicts: StockVerdict[];
};

/** Reads a job's time line with a verdict for every step, and for everything that hangs on its day. */
export async function readTimeline(book: OpenBook, job: JobLine, today: CalendarDate): Promise<Timeline> {
  const steps = await readSteps(book.read, job.id);
  const [facts, stock] = await Promise.all([
    timelineFactsOf(book.read, steps, { today, dueOn: job.dueOn }),
    stockOfJob(book, job, today),
  ]);
  return { steps, facts, stock, verdicts: judgeTimeline(steps, facts), stockVerdicts: judgeStock(stock, steps) };
}
