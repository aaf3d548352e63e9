import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { planPage } from '@/app/_server/pours/plan-page';
import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { readId } from '@/app/(shop)/_parts/read-id';
import { PlanForm } from '@/app/(shop)/jobs/[id]/pours/_ui/plan-form';
import { planWood } from '@/app/(shop)/jobs/[id]/pours/_ui/plan-wood';
import { startPlan } from '@/app/(shop)/jobs/[id]/pours/start-plan';
import { addDays } from '@/shared/calendar/add-days';
import { sayDate } from '@/shared/calendar/say-date';
import { openDay } from '@/shared/timeline/closed-days';

export const metadata: Metadata = { title: 'Plan a pour' };

/** A new pour for a job. */
export default async function NewPourPage({ params }: { params: Promise<{ id: string }> }) {
  const { book, head } = await bookForPage();
  const jobId = readId((await params).id);
  const page = jobId === undefined ? undefined : await planPage(book, jobId);
  if (!page) notFound();
  const { job, systems, choices, closed } = page;
  const { today, units, dateOrder: order } = head;
  const known = systems.filter(({ sheet }) => sheet);
  const first = openDay(addDays(today, 1), closed);
  return (
    <Page title="Plan a pour" context={job.name} back={{ href: `/jobs/${job.id}`, words: job.name }}>
      {job.state !== 'open' ? (
        <Empty title={`${job.name} is ${job.state}.`} toDo="Open the job again before anything is planned for it." />
      ) : systems.length === 0 ? (
        <Empty
          title="The book knows no resin yet."
          toDo="Book in a part A and a part B first, and name the system they belong to."
        >
          <LinkKey href="/arrive">Book something in</LinkKey>
        </Empty>
      ) : (
        <PlanForm
          jobId={job.id}
          job={job.name}
          start={startPlan(choices, {
            units,
            systemId: known.length === 1 ? known[0]?.id : undefined,
            first: sayDate(first, { order }),
          })}
          systems={systems}
          wood={planWood(choices.wood)}
          closed={closed}
          today={today}
          order={order}
          units={units}
        />
      )}
    </Page>
  );
}
