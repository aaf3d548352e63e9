import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { listJobs } from '@/app/_server/jobs/read-jobs';
import { PullBench } from '@/app/(shop)/pull/_ui/pull-bench';
import type { PullStart } from '@/app/(shop)/pull/_ui/pull-start';
import { parseCalendarDate } from '@/shared/calendar/calendar-date';

export const metadata: Metadata = { title: 'Pull' };

type Query = Promise<Record<string, string | string[] | undefined>>;

/** May I use this, on this job, on that day? `/pull?label=C4K7VMX&job=3&day=2026-12-19` opens with the question asked. */
export default async function PullPage({ searchParams }: { searchParams: Query }) {
  const { book, head } = await bookForPage();
  const [jobs, query] = await Promise.all([listJobs(book, 'open'), searchParams]);
  return (
    <PullBench jobs={jobs} today={head.today} units={head.units} dateOrder={head.dateOrder} start={startOf(query)} />
  );
}

function startOf(query: Awaited<Query>): PullStart {
  const one = (name: string) => [query[name] ?? []].flat()[0];
  const day = parseCalendarDate(one('day') ?? '');
  const job = Number(one('job'));
  return {
    label: one('label')?.slice(0, 5000),
    jobId: Number.isSafeInteger(job) && job > 0 ? job : undefined,
    day: day.ok ? day.value : undefined,
  };
}
