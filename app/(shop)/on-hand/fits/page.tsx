import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { AT_ONCE, searchOffThread } from '@/app/_server/fits/search-off-thread';
import { whatFits } from '@/app/_server/fits/what-fits';
import { loadJob } from '@/app/_server/jobs/read-jobs';
import { listSpecies } from '@/app/_server/stock/list-species';
import { Fold } from '@/app/_ui/fold';
import { Page } from '@/app/_ui/page';
import { readId } from '@/app/(shop)/_parts/read-id';
import { FitForm } from '@/app/(shop)/on-hand/fits/_ui/fit-form';
import styles from '@/app/(shop)/on-hand/fits/_ui/fits.module.css';
import { FitsLive } from '@/app/(shop)/on-hand/fits/_ui/fits-live';
import { fitsView } from '@/app/(shop)/on-hand/fits/fits-view';
import { type GivenParams, readQuestion } from '@/app/(shop)/on-hand/fits/question';
import { sayQuestion } from '@/app/(shop)/on-hand/fits/say-question';

const TITLE = 'What can this top be cut from?';

/** So long the page waits for its answer; what is left then is looked at while the first of it is read. */
const AT_ONCE_MS = 1200;

export const metadata: Metadata = { title: TITLE };

export default async function FitsPage({ searchParams }: { searchParams: Promise<GivenParams> }) {
  const { book, head } = await bookForPage();
  const { units: prefer, today, dateOrder: order } = head;
  const params = await searchParams;
  const { typed, asked, read } = readQuestion(params, { prefer, today, order });
  // The job a search was begun for is carried on in its address.
  const jobId = typeof params.job === 'string' ? readId(params.job) : undefined;
  const wanted = jobId === undefined ? undefined : await loadJob(book.read, jobId);
  const job = wanted?.state === 'open' ? wanted : undefined;
  const back = job ? { href: `/jobs/${job.id}`, words: job.name } : { href: '/on-hand?show=wood', words: 'On hand' };
  // A new question starts the form afresh, with what it was asked by in it.
  const key = JSON.stringify(typed);
  const form = (
    <FitForm
      key={key}
      first={typed}
      problems={asked && !read.ok ? read.error : {}}
      prefer={prefer}
      species={await listSpecies(book)}
      jobId={job?.id}
    />
  );
  const fits =
    asked && read.ok
      ? await whatFits(book, read.value, head, { milliseconds: AT_ONCE_MS, search: searchOffThread, atOnce: AT_ONCE })
      : undefined;
  if (!read.ok || !fits?.ok) {
    return (
      <Page title={TITLE} context={job ? `for ${job.name}` : undefined} back={back}>
        {form}
      </Page>
    );
  }
  return (
    <Page title={TITLE} context={job ? `for ${job.name}` : undefined} back={back}>
      <ul className={styles.chips} aria-label="The question">
        {sayQuestion(read.value, { prefer, today, order }).map(({ term, says }) => (
          <li key={term}>
            <span>{term}</span> {says}
          </li>
        ))}
      </ul>
      <Fold key={key} title="Change the question">
        {form}
      </Fold>
      <FitsLive
        key={`answers ${key}`}
        first={fitsView(fits.value, read.value, {
          prefer,
          today,
          order,
          moisture: read.value.mostTenths !== undefined,
          best: read.value.request.best ?? 'balanced',
        })}
        isPart={fits.value.cut !== undefined}
        query={new URLSearchParams(
          Object.entries(params).flatMap(([name, value]) => [value ?? []].flat().map((one) => [name, one])),
        ).toString()}
        jobId={job?.id}
      />
    </Page>
  );
}
