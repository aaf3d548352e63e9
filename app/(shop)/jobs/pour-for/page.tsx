import type { Metadata } from 'next';
import Link from 'next/link';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { searchOffThread } from '@/app/_server/fits/search-off-thread';
import { listJobs } from '@/app/_server/jobs/read-jobs';
import { namedPieces } from '@/app/_server/pours/named-pieces';
import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { PlainError } from '@/app/_ui/plain-error';
import { Section } from '@/app/_ui/section';
import { RiverDrawing } from '@/app/_ui/slab/river-drawing';
import { readAskedPour, riverOfAddress } from '@/app/(shop)/jobs/_parts/asked-pour';
import styles from '@/app/(shop)/jobs/_ui/jobs.module.css';
import { sayWhose } from '@/app/(shop)/jobs/_ui/say-job';
import { sayRiverFrom, sayRiverHolds, sayRiverOf, sayRiverSize } from '@/app/(shop)/jobs/[id]/pours/say-river';
import type { GivenParams } from '@/app/(shop)/on-hand/fits/question';
import { sayDate } from '@/shared/calendar/say-date';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

const TITLE = 'Which job is it poured for?';

export const metadata: Metadata = { title: TITLE };

/** Chooses the job that a river, or the fills of a piece, are poured for; the address goes on to its planner as it is. */
export default async function PourForPage({ searchParams }: { searchParams: Promise<GivenParams> }) {
  const { book, head } = await bookForPage();
  const { units, today, dateOrder: order } = head;
  const params = await searchParams;
  const asked = readAskedPour(params);
  const [jobs, pieces, found] = await Promise.all([
    listJobs(book, 'open'),
    namedPieces(book, asked.labels),
    riverOfAddress(book, asked, { prefer: units, today, order }, searchOffThread),
  ]);
  const back =
    asked.asked === ''
      ? { href: '/on-hand?show=wood', words: 'On hand' }
      : { href: `/on-hand/fits?${asked.asked}`, words: 'The search' };
  const owners = new Map(
    pieces.flatMap(({ stands }) => (stands.is === 'elsewhere' ? [[stands.job.id, stands.job]] : [])),
  );
  // The job that has the wood stands first: it is the one it can be poured for.
  const inOrder = [...jobs].sort((one, two) => Number(owners.has(two.id)) - Number(owners.has(one.id)));
  const rest = new URLSearchParams(
    Object.entries(params).flatMap(([name, value]) => [value ?? []].flat().map((one) => [name, one])),
  );
  if (pieces.length === 0) {
    return (
      <Page title={TITLE} back={back}>
        <Empty
          title="That names no piece of this book."
          toDo="Search for the top again, or open the piece by its label."
        >
          <LinkKey href="/on-hand/fits">Search for a top</LinkKey>
        </Empty>
      </Page>
    );
  }
  return (
    <Page title={TITLE} back={back}>
      {found && !found.ok ? (
        <PlainError happened={found.error.what} kept="Nothing was written." toDo={found.error.todo} />
      ) : null}
      {found?.ok ? (
        <figure className={styles.river}>
          <RiverDrawing river={found.value} label={`The finished top, to scale: ${sayRiverOf(found.value)}`} />
          <figcaption>
            {sayRiverFrom(found.value, { units, order, today })} {sayRiverSize(found.value, { units })}{' '}
            {sayRiverHolds(found.value, units)}
          </figcaption>
        </figure>
      ) : (
        <p className={styles.soft}>
          What is marked to be filled on{' '}
          {pieces.map(({ title, label }) => `${title}, ${printOwnLabel(label)}`).join(' and ')}.
        </p>
      )}
      {pieces.map(({ label, stands }) =>
        stands.is === 'elsewhere' || stands.is === 'gone' ? (
          <p key={label} className={styles.warning}>
            {printOwnLabel(label)}{' '}
            {stands.is === 'gone'
              ? 'is not on hand any more.'
              : `is promised to ${stands.job.name}: no other job can be poured in it.`}
          </p>
        ) : null,
      )}
      <Section title="Open jobs">
        {jobs.length === 0 ? (
          <Empty title="No job is open." toDo="A pour belongs to a job. Add one, then come back to this.">
            <LinkKey href="/jobs/new">Add a job</LinkKey>
          </Empty>
        ) : (
          <ul className={styles.list} aria-label="Open jobs">
            {inOrder.map((job) => (
              <li key={job.id}>
                <Link href={`/jobs/${job.id}/pours/new?${rest}`} className={styles.job}>
                  <span className={styles.name}>{job.name}</span>
                  <span className={styles.day}>{sayDate(job.dayOfUse, { order, today })}</span>
                  <span className={styles.soft}>
                    {sayWhose(job)}
                    {owners.has(job.id) ? ', has the wood promised' : ''}
                  </span>
                </Link>
              </li>
            ))}
          </ul>
        )}
      </Section>
    </Page>
  );
}
