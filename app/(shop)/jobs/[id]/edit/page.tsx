import type { Metadata } from 'next';
import { Page } from '@/app/_ui/page';
import { JobForm } from '@/app/(shop)/jobs/_ui/job-form';
import { jobOfPage } from '@/app/(shop)/jobs/[id]/job-of-page';

export const metadata: Metadata = { title: 'Change a job' };

export default async function EditJobPage({ params }: { params: Promise<{ id: string }> }) {
  const { job, head } = await jobOfPage(params);
  return (
    <Page title="Change the job" back={{ href: `/jobs/${job.id}`, words: job.name }}>
      <JobForm job={job} today={head.today} dateOrder={head.dateOrder} />
    </Page>
  );
}
