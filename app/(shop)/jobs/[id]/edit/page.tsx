import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { readTimeline } from '@/app/_server/timeline/read-timeline';
import { Page } from '@/app/_ui/page';
import { JobForm } from '@/app/(shop)/jobs/_ui/job-form';
import { jobOfPage } from '@/app/(shop)/jobs/[id]/job-of-page';
import { lastUse } from '@/shared/timeline/last-use';
import { readyDays } from '@/shared/timeline/ready-days';

export const metadata: Metadata = { title: 'Change a job' };

export default async function EditJobPage({ params }: { params: Promise<{ id: string }> }) {
  const { job, head } = await jobOfPage(params);
  const { book } = await bookForPage();
  const { steps, facts, stock } = await readTimeline(book, job, head.today);
  const follows = lastUse(steps) !== undefined;
  const dryOn = stock.pieces.flatMap(({ line, dry }) =>
    line.form !== 'sheet' && dry.known ? (dry.dates.likely ?? []) : [],
  );
  return (
    <Page title="Change the job" back={{ href: `/jobs/${job.id}`, words: job.name }}>
      <JobForm
        job={job}
        today={head.today}
        dateOrder={head.dateOrder}
        follows={follows}
        ready={readyDays(steps, facts, dryOn)}
      />
    </Page>
  );
}
