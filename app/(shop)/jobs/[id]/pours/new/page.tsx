import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { searchOffThread } from '@/app/_server/fits/search-off-thread';
import { planPage } from '@/app/_server/pours/plan-page';
import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { PlainError } from '@/app/_ui/plain-error';
import { readId } from '@/app/(shop)/_parts/read-id';
import { readAskedPour, riverOfAddress } from '@/app/(shop)/jobs/_parts/asked-pour';
import { PlanForm } from '@/app/(shop)/jobs/[id]/pours/_ui/plan-form';
import { planWood } from '@/app/(shop)/jobs/[id]/pours/_ui/plan-wood';
import { startPlan } from '@/app/(shop)/jobs/[id]/pours/start-plan';
import type { GivenParams } from '@/app/(shop)/on-hand/fits/question';
import { addDays } from '@/shared/calendar/add-days';
import { sayDate } from '@/shared/calendar/say-date';
import { openDay } from '@/shared/timeline/closed-days';

export const metadata: Metadata = { title: 'Plan a pour' };

type Props = { params: Promise<{ id: string }>; searchParams: Promise<GivenParams> };

/** A new pour for a job: of its drawings, or of a river or fills that its address names. */
export default async function NewPourPage({ params, searchParams }: Props) {
  const { book, head } = await bookForPage();
  const { today, units, dateOrder: order } = head;
  const jobId = readId((await params).id);
  const asked = readAskedPour(await searchParams);
  const page = jobId === undefined ? undefined : await planPage(book, jobId, asked);
  if (!page) notFound();
  const { job, systems, choices, named, closed } = page;
  const found = await riverOfAddress(book, asked, { prefer: units, today, order }, searchOffThread);
  const river = found?.ok ? found.value : undefined;
  const ofNamed = choices.fills.filter(({ label }) => asked.labels.some((one) => one === label)).map(({ id }) => id);
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
        <>
          {found && !found.ok ? (
            <PlainError happened={found.error.what} kept="Nothing was written." toDo={found.error.todo}>
              <LinkKey variant="ghost" href={`/on-hand/fits?${asked.asked}&job=${job.id}`}>
                Search again
              </LinkKey>
            </PlainError>
          ) : null}
          <PlanForm
            jobId={job.id}
            job={job.name}
            parts={page.parts}
            part={page.part}
            start={startPlan(choices, {
              units,
              systemId: known.length === 1 ? known[0]?.id : undefined,
              first: sayDate(first, { order }),
              river,
              wanted: asked.wanted ?? (asked.labels.length > 0 ? ofNamed : undefined),
            })}
            systems={systems}
            wood={planWood(choices.wood)}
            river={river}
            named={named}
            closed={closed}
            today={today}
            order={order}
            units={units}
          />
        </>
      )}
    </Page>
  );
}
