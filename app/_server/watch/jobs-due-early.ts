import { undoneStep } from '@/app/_server/watch/standing-steps';
import type { NoteContext, WatchNote } from '@/app/_server/watch/watch-note';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import { sayDate } from '@/shared/calendar/say-date';

/** Open jobs that are promised for a day before the last of their steps: before the cure ends, most often. */
export async function jobsDueEarly(book: OpenBook, { today, dateOrder: order }: NoteContext): Promise<WatchNote[]> {
  const steps = await book.read.step.findMany({
    where: {
      ...undoneStep,
      kind: { in: ['cure', 'coat', 'lift', 'demould'] },
      job: { state: 'open', dueOn: { not: null } },
    },
    orderBy: [{ day: 'desc' }, { id: 'asc' }],
    select: { kind: true, day: true, jobId: true, job: { select: { name: true, dueOn: true } } },
  });
  const last = new Map<number, (typeof steps)[number]>();
  for (const step of steps) if (!last.has(step.jobId)) last.set(step.jobId, step);
  return [...last.values()].flatMap(({ kind, day, jobId, job }): WatchNote[] => {
    if (job.dueOn === null || job.dueOn >= day) return [];
    const days = daysBetween(job.dueOn as CalendarDate, day as CalendarDate);
    const say = (date: string) => sayDate(date as CalendarDate, { order, today });
    const ends = kind === 'cure' ? 'the cure ends' : 'the last step is';
    return [
      {
        id: `due-${jobId}-${job.dueOn}-${day}`,
        href: `/jobs/${jobId}`,
        name: job.name,
        label: `Due ${say(job.dueOn)}`,
        place: null,
        word: 'stop',
        says: `${days} ${days === 1 ? 'day' : 'days'} too early`,
        why: `Promised for ${say(job.dueOn)}; ${ends} ${say(day)}.`,
        toDo: 'Tell the client a later day, or move the steps on the job’s page. A finish that has not cured marks and sticks.',
      },
    ];
  });
}
