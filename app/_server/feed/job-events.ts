import type { FeedEvent } from '@/app/_server/feed/feed-event';
import { newestOfJobs, newestOfProducts } from '@/app/_server/feed/newest-entries';
import { sayStep } from '@/app/_server/watch/say-step';
import { undoneSteps } from '@/app/_server/watch/undone-steps';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** The days of open jobs: every step still to be done, the day each is promised for, the day of use where it has no steps. */
export async function jobEvents(book: OpenBook): Promise<FeedEvent[]> {
  const [steps, jobs] = await Promise.all([
    undoneSteps(book),
    book.read.job.findMany({
      where: { state: 'open' },
      orderBy: { id: 'asc' },
      select: { id: true, name: true, client: true, dueOn: true, dayOfUse: true },
    }),
  ]);
  const [newest, renamed] = await Promise.all([
    newestOfJobs(
      book,
      jobs.map(({ id }) => id),
    ),
    newestOfProducts(
      book,
      steps.flatMap(({ productId }) => productId ?? []),
    ),
  ]);
  const withSteps = new Set(steps.map(({ jobId }) => jobId));
  const entryOf = (jobId: number) => newest.get(jobId) ?? 0;
  return [
    ...steps.map((step) => ({
      id: step.matter,
      day: step.day,
      summary: `${sayStep(step)}: ${step.job}`,
      description: step.note || 'A step of this job’s time line.',
      path: `/jobs/${step.jobId}`,
      entryId: Math.max(entryOf(step.jobId), step.entryId, renamed.get(step.productId ?? 0) ?? 0),
    })),
    ...jobs.flatMap(({ id, name, client, dueOn, dayOfUse }) => {
      const common = { path: `/jobs/${id}`, entryId: entryOf(id) };
      const whose = client ? `For ${client}.` : 'No client.';
      const due = {
        id: `due-${id}`,
        day: dueOn as CalendarDate,
        summary: `Due: ${name}`,
        description: whose,
        ...common,
      };
      const use = {
        id: `use-${id}`,
        day: dayOfUse as CalendarDate,
        summary: `Day of use: ${name}`,
        description: `Last lift or last coat. ${whose}`,
        ...common,
      };
      return [...(dueOn ? [due] : []), ...(withSteps.has(id) ? [] : [use])];
    }),
  ];
}
