import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { choicesForFault } from '@/app/_server/faults/choices-for-fault';
import { seenOnSample } from '@/app/_server/faults/seen-on-sample';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { readId } from '@/app/(shop)/_parts/read-id';
import { thingHref } from '@/app/(shop)/_parts/thing-href';
import { FaultForm } from '@/app/(shop)/faults/_ui/fault-form';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

type Asked = { job?: string; piece?: string; container?: string; lift?: string; sample?: string };

export const metadata: Metadata = { title: 'Write a fault down' };

export default async function NewFaultPage({ searchParams }: { searchParams: Promise<Asked> }) {
  const asked = await searchParams;
  const { book, head } = await bookForPage();
  const seen = await seenOnSample(book, readId(asked.sample ?? ''));
  const label = parseOwnLabel(asked.piece ?? asked.container ?? '');
  const ask = {
    jobId: readId(asked.job ?? ''),
    liftId: seen?.liftId ?? readId(asked.lift ?? ''),
    label: label.ok ? label.value.code : undefined,
  };
  const choices = await choicesForFault(book, ask);
  if (!choices) notFound();
  const { job, ...rest } = choices;
  const thing = ask.label && !ask.jobId ? { href: thingHref(ask.label), words: printOwnLabel(ask.label) } : undefined;
  const back = thing ?? (job ? { href: `/jobs/${job.id}`, words: job.name } : { href: '/jobs', words: 'Jobs' });
  return (
    <Page title="Write a fault down" context={job?.name ?? back.words} back={back}>
      <Section>
        <FaultForm
          choices={rest}
          jobId={job?.id}
          liftId={ask.liftId}
          label={ask.label}
          seen={seen}
          prefer={head.units}
          today={head.today}
          order={head.dateOrder}
          back={back.href}
        />
      </Section>
    </Page>
  );
}
