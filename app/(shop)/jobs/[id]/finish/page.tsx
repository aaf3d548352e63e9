import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { listFinishes } from '@/app/_server/finish/list-finishes';
import { readParts } from '@/app/_server/jobs/read-parts';
import { usualPart } from '@/app/_server/jobs/usual-part';
import { readClosedDays } from '@/app/_server/timeline/read-closed-days';
import { readSteps } from '@/app/_server/timeline/read-steps';
import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import styles from '@/app/(shop)/jobs/[id]/finish/_ui/finish.module.css';
import { PlanCoatsForm } from '@/app/(shop)/jobs/[id]/finish/_ui/plan-coats-form';
import { firstCoatDay } from '@/app/(shop)/jobs/[id]/finish/first-coat-day';
import { jobOfPage } from '@/app/(shop)/jobs/[id]/job-of-page';
import { sayPart } from '@/app/(shop)/jobs/[id]/part-rows';
import { sayDate } from '@/shared/calendar/say-date';
import { inOrder } from '@/shared/timeline/step';

export const metadata: Metadata = { title: 'Plan finish coats' };

/** Coats of finish for a job: which, on what, how many, when; what they take. */
export default async function FinishPage({ params }: { params: Promise<{ id: string }> }) {
  const { job, head } = await jobOfPage(params);
  const { book } = await bookForPage();
  const { today, dateOrder: order, units: prefer } = head;
  const [finishes, parts, steps, closed] = await Promise.all([
    listFinishes(book),
    readParts(book.read, job.id),
    readSteps(book.read, job.id),
    readClosedDays(book.read),
  ]);
  const back = { href: `/jobs/${job.id}`, words: job.name };
  const coats = inOrder(steps).filter(({ kind }) => kind === 'coat');
  const part = await usualPart(book.read, job.id, parts);
  const nameOf = new Map(parts.map(({ id, name }) => [id, name]));
  const firstDays = [null, ...parts.map(({ id }) => id)].map((partId) => ({
    partId,
    day: firstCoatDay(partId, steps, today),
  }));
  if (job.state !== 'open' || finishes.length === 0) {
    return (
      <Page title="Plan finish coats" back={back}>
        <Empty
          title={job.state === 'open' ? 'No finish is in the book yet.' : 'This job is over.'}
          toDo={
            job.state === 'open'
              ? 'Book a tin of it in under Arrive, or teach the product there. Then its coats are planned here.'
              : 'Open it again on its page to plan coats for it.'
          }
        >
          <LinkKey href={job.state === 'open' ? '/arrive' : back.href}>
            {job.state === 'open' ? 'Arrive' : job.name}
          </LinkKey>
        </Empty>
      </Page>
    );
  }
  return (
    <Page title="Plan finish coats" context={job.name} back={back}>
      {coats.length > 0 ? (
        <Section title="On the time line already">
          <ul className={styles.plain} aria-label="Coats planned already">
            {coats.map((coat) => (
              <li key={coat.id}>
                <b>{coat.name}</b>
                {coat.partId === null ? '' : `, ${nameOf.get(coat.partId)}`}{' '}
                <span className={styles.soft}>
                  {coat.doneOn ? `done ${sayDate(coat.doneOn, { order, today })}` : sayDate(coat.day, { order, today })}
                </span>
              </li>
            ))}
          </ul>
        </Section>
      ) : null}
      <PlanCoatsForm
        jobId={job.id}
        finishes={finishes}
        parts={parts.map((part) => ({ ...part, says: sayPart(part, prefer) }))}
        closed={closed}
        part={part}
        firstDays={firstDays}
        today={today}
        order={order}
        prefer={prefer}
      />
    </Page>
  );
}
