import type { Metadata } from 'next';
import Link from 'next/link';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { type NextStep, nextSteps } from '@/app/_server/jobs/next-steps';
import { listJobs } from '@/app/_server/jobs/read-jobs';
import { Empty } from '@/app/_ui/empty';
import { KeyBar, LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import styles from '@/app/(shop)/jobs/_ui/jobs.module.css';
import { STAGE_WORDS, sayAway, sayWhose } from '@/app/(shop)/jobs/_ui/say-job';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';

export const metadata: Metadata = { title: 'Jobs' };

/** The open jobs by their day of use; with `?all=1` also those that are done or dropped. */
export default async function JobsPage({ searchParams }: { searchParams: Promise<{ all?: string | string[] }> }) {
  const { book, head } = await bookForPage();
  const all = (await searchParams).all !== undefined;
  const jobs = await listJobs(book, all ? 'all' : 'open');
  const next = await nextSteps(
    book,
    jobs.filter(({ state }) => state === 'open').map(({ id }) => id),
  );
  const { today, dateOrder: order } = head;
  return (
    <Page
      title="Jobs"
      context={jobs.length > 0 ? (all ? 'all, latest first' : 'open, by day of use') : undefined}
      settings
    >
      {jobs.length === 0 ? (
        <Empty
          title={all ? 'No job is in the book yet.' : 'No job is open.'}
          toDo="Add one with the day it needs its last pour or coat. Pull then judges every tin for that day."
        />
      ) : (
        <ul className={styles.list} aria-label={all ? 'All jobs' : 'Open jobs'}>
          {jobs.map((job) => (
            <li key={job.id}>
              <Link href={`/jobs/${job.id}`} className={styles.job}>
                <span className={styles.name}>{job.name}</span>
                <span className={styles.day}>{sayDate(job.dayOfUse, { order, today })}</span>
                <span className={styles.soft}>
                  {sayWhose(job)}, {STAGE_WORDS[job.stage].toLowerCase()}
                  {sayNext(next.get(job.id), { today, order })}
                </span>
                <span className={styles.soft}>{job.state === 'open' ? sayAway(job.dayOfUse, today) : ''}</span>
              </Link>
            </li>
          ))}
        </ul>
      )}
      <p>
        <Link href={all ? '/jobs' : '/jobs?all=1'} className={styles.other}>
          {all ? 'Only the open ones' : 'Done and dropped ones too'}
        </Link>
      </p>
      <KeyBar>
        <LinkKey href="/jobs/new">Add a job</LinkKey>
        <LinkKey variant="ghost" href="/jobs/allotted">
          Which tin for which job
        </LinkKey>
      </KeyBar>
    </Page>
  );
}

/** `. Next: demould, 4 Dec`, and that it is late where it is. */
function sayNext(next: NextStep | undefined, { today, order }: { today: CalendarDate; order: DateOrder }): string {
  if (!next) return '';
  return `. Next: ${next.name}, ${sayDate(next.day, { order, today })}${next.day < today ? ', late' : ''}`;
}
