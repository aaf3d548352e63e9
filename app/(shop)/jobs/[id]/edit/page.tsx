import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { readSteps } from '@/app/_server/timeline/read-steps';
import { Page } from '@/app/_ui/page';
import { JobForm } from '@/app/(shop)/jobs/_ui/job-form';
import { jobOfPage } from '@/app/(shop)/jobs/[id]/job-of-page';
import { lastUse } from '@/shared/timeline/last-use';

export const metadata: Metadata = { title: 'Change a job' };

export default async function EditJobPage({ params }: { params: Promise<{ id: string }> }) {
  const { job, head } = await jobOfPage(params);
  const { book } = await bookForPage();
  const follows = lastUse(await readSteps(book.read, job.id)) !== undefined;
  return (
    <Page title="Change the job" back={{ href: `/jobs/${job.id}`, words: job.name }}>
      <JobForm job={job} today={head.today} dateOrder={head.dateOrder} follows={follows} />
    </Page>
  );
}
