import type { Metadata } from 'next';
import Link from 'next/link';
import { Code } from '@/app/_ui/code';
import { Facts } from '@/app/_ui/facts';
import { KeyBar, LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { HistorySection } from '@/app/(shop)/_parts/history-section';
import { JobState } from '@/app/(shop)/jobs/_ui/job-state';
import styles from '@/app/(shop)/jobs/_ui/jobs.module.css';
import { PURPOSE_WORDS, STATE_WORDS, sayAway, sayWhose } from '@/app/(shop)/jobs/_ui/say-job';
import { jobOfPage } from '@/app/(shop)/jobs/[id]/job-of-page';
import { sayDate } from '@/shared/calendar/say-date';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { sayPieceSize } from '@/shared/wood/say-piece-size';

type Params = Promise<{ id: string }>;

export async function generateMetadata({ params }: { params: Params }): Promise<Metadata> {
  return { title: (await jobOfPage(params)).job.name };
}

/** One job: what it is, the wood it has, what was pulled for it. */
export default async function JobPage({ params }: { params: Params }) {
  const { job, pieces, head } = await jobOfPage(params);
  const { today, units, dateOrder: order } = head;
  const promised = pieces.filter((piece) => piece.facts.inStock);
  const taken = pieces.filter((piece) => !piece.facts.inStock);
  const open = job.state === 'open';
  return (
    <Page
      title={job.name}
      context={open ? sayWhose(job) : STATE_WORDS[job.state]}
      back={{ href: '/jobs', words: 'Jobs' }}
    >
      {open && job.dayOfUse < today ? (
        <p className={styles.warning}>
          Its day of use has passed. What is pulled for it is judged for today until the day is changed.
        </p>
      ) : null}
      <Facts
        facts={[
          {
            term: 'Day of use',
            value: `${sayDate(job.dayOfUse, { order, today })}${open ? `, ${sayAway(job.dayOfUse, today)}` : ''}`,
          },
          {
            term: 'Whose',
            value: job.client ? `${PURPOSE_WORDS[job.purpose]}, ${job.client}` : PURPOSE_WORDS[job.purpose],
          },
          { term: 'State', value: STATE_WORDS[job.state] },
          ...(job.note ? [{ term: 'Note', value: <span className={styles.note}>{job.note}</span> }] : []),
        ]}
      />
      <Section title="Wood">
        {pieces.length === 0 ? (
          <p className={styles.soft}>
            No piece is promised to it. Scan a slab or a board under Pull to promise it or take it.
          </p>
        ) : (
          <ul className={styles.pieces} aria-label="Pieces of this job">
            {[...promised, ...taken].map((piece) => (
              <li key={piece.stockId}>
                <Link href={`/pieces/${piece.label}`} className={styles.piece}>
                  <b>
                    {piece.species} {piece.form}
                  </b>
                  <Code>{printOwnLabel(piece.label)}</Code>
                  <span>{sayPieceSize(piece, { prefer: units })}</span>
                  <span className={styles.soft}>
                    {piece.facts.inStock ? `promised${piece.place ? `, ${piece.place}` : ''}` : 'taken'}
                  </span>
                </Link>
              </li>
            ))}
          </ul>
        )}
      </Section>
      <Section title={open ? 'When it is over' : 'Open it again'}>
        <JobState job={job} promised={promised.length} />
      </Section>
      <HistorySection of={{ jobId: job.id }} />
      <KeyBar>
        {open ? <LinkKey href={`/pull?job=${job.id}`}>Pull for {job.name}</LinkKey> : null}
        <LinkKey variant="ghost" href={`/jobs/${job.id}/edit`}>
          Change it
        </LinkKey>
      </KeyBar>
    </Page>
  );
}
