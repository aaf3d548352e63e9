import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { Page } from '@/app/_ui/page';
import { JobForm } from '@/app/(shop)/jobs/_ui/job-form';

export const metadata: Metadata = { title: 'Add a job' };

export default async function NewJobPage({ searchParams }: { searchParams: Promise<{ then?: string | string[] }> }) {
  const { head } = await bookForPage();
  const then = (await searchParams).then === 'pull' ? 'pull' : undefined;
  return (
    <Page title="Add a job" back={then ? { href: '/pull', words: 'Pull' } : { href: '/jobs', words: 'Jobs' }}>
      <JobForm today={head.today} dateOrder={head.dateOrder} then={then} />
    </Page>
  );
}
