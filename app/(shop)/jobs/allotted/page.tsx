import type { Metadata } from 'next';
import Link from 'next/link';
import { readAllocation } from '@/app/_server/allocation/read-allocation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { Empty } from '@/app/_ui/empty';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import styles from '@/app/(shop)/jobs/allotted/_ui/allotted.module.css';
import { ChoicePart } from '@/app/(shop)/jobs/allotted/_ui/choice-part';
import { ConflictPart } from '@/app/(shop)/jobs/allotted/_ui/conflict-part';
import { PromiseKey } from '@/app/(shop)/jobs/allotted/_ui/promise-key';
import { TinList } from '@/app/(shop)/jobs/allotted/_ui/tin-list';
import { allottedJobs } from '@/app/(shop)/jobs/allotted/allotted-view';
import { comparedView, saidDifference } from '@/app/(shop)/jobs/allotted/compared-view';
import { sayAllocation } from '@/shared/allocation/say-allocation';

export const metadata: Metadata = { title: 'Which tin for which job' };

/** Resin and finish allotted over all open jobs at once, as well as it can be done, beside what a careful hand would do. */
export default async function AllottedPage() {
  const { book, head } = await bookForPage();
  const { today, dateOrder: order, units: prefer, currency } = head;
  const read = await readAllocation(book, head);
  const context = { prefer, today, order, currency };
  const jobs = allottedJobs(read, context);
  const isShort = read.allocation.short.length > 0;
  const sentences = sayAllocation(read.ask, read.allocation, context);
  // Whether it is the best there is comes first: the rest is read in its light.
  const [said, proof] = [sentences.slice(0, -1), sentences.at(-1)];
  return (
    <Page title="Which tin for which job" back={{ href: '/jobs', words: 'Jobs' }}>
      {jobs.length === 0 ? (
        <Empty
          title="No open job wants resin or finish that is not promised yet."
          toDo="Plan a pour or coats on a job, or write what it needs. Then this page says which tin goes where."
        />
      ) : (
        <>
          <p className={styles.lead}>{proof}</p>
          <ul className={styles.said} aria-label="How it comes out">
            {said.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          {isShort ? <ConflictPart /> : null}
          <Section title="Beside what a careful hand would take">
            <table className={styles.compared}>
              <thead>
                <tr>
                  <th scope="col">Counted in this order</th>
                  <th scope="col">Worked out</th>
                  <th scope="col">First to expire, tin by tin</th>
                </tr>
              </thead>
              <tbody>
                {comparedView(read, context).map(({ term, best, byHand }) => (
                  <tr key={term}>
                    <th scope="row">{term}</th>
                    <td>{best}</td>
                    <td>{byHand}</td>
                  </tr>
                ))}
              </tbody>
            </table>
            <p className={styles.soft}>{saidDifference(read, context)} What is promised already stays promised.</p>
          </Section>
          {jobs.map((job) => (
            <Section key={job.jobId} title={<Link href={`/jobs/${job.jobId}`}>{job.name}</Link>}>
              <ul className={styles.needs} aria-label={`What ${job.name} gets`}>
                {job.needs.map((need) => (
                  <li key={need.id} className={styles.need}>
                    <div className={styles.head}>
                      <b>{need.what}</b>
                      <span>
                        {need.amount}, {need.day}
                      </span>
                    </div>
                    <div className={need.byHand ? styles.ways : undefined}>
                      <div>
                        {need.byHand ? <h3 className={styles.way}>Worked out</h3> : null}
                        <TinList tins={need.tins} title={`Tins for ${need.what}`}>
                          {({ containerId, code }) => (
                            <ChoicePart needId={need.id} containerId={containerId} code={code} />
                          )}
                        </TinList>
                        {need.short ? <p className={styles.short}>{need.short}.</p> : null}
                      </div>
                      {need.byHand ? (
                        <div>
                          <h3 className={styles.way}>By hand, first to expire</h3>
                          <p className={styles.soft}>{need.byHand.differs}.</p>
                          <TinList tins={need.byHand.tins} title={`Tins by hand for ${need.what}`} />
                          {need.byHand.short ? <p className={styles.short}>{need.byHand.short}.</p> : null}
                        </div>
                      ) : null}
                    </div>
                  </li>
                ))}
              </ul>
              <div className={styles.keys}>
                {job.items.length > 0 ? (
                  <PromiseKey jobId={job.jobId} items={job.items}>
                    {job.byHand ? `Promise ${job.name} what was worked out` : `Promise these to ${job.name}`}
                  </PromiseKey>
                ) : null}
                {job.byHand && job.byHand.length > 0 ? (
                  <PromiseKey jobId={job.jobId} items={job.byHand}>
                    Promise {job.name} the tins by hand
                  </PromiseKey>
                ) : null}
              </div>
            </Section>
          ))}
          <p className={styles.soft}>
            Nothing is used past its limit on its day, part A goes with part B of its system, and one visible surface
            gets one lot where that can be. The data sheet of the resin or finish comes before this page.
          </p>
          {read.uncounted.length > 0 ? (
            <p className={styles.soft}>
              {read.uncounted.length === 1 ? 'One container is' : `${read.uncounted.length} containers are`} counted by
              volume without a density, so nothing can be weighed out of {read.uncounted.length === 1 ? 'it' : 'them'}{' '}
              here.
            </p>
          ) : null}
        </>
      )}
    </Page>
  );
}
