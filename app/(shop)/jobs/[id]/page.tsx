import type { Metadata } from 'next';
import Link from 'next/link';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { promisedCount } from '@/app/_server/jobs/promised-count';
import { readParts } from '@/app/_server/jobs/read-parts';
import { standingNeeds } from '@/app/_server/needs/standing-needs';
import { readTimeline } from '@/app/_server/timeline/read-timeline';
import { sayStock } from '@/app/_server/timeline/say-stock';
import { Code } from '@/app/_ui/code';
import { Facts } from '@/app/_ui/facts';
import { KeyBar, LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { HistorySection } from '@/app/(shop)/_parts/history-section';
import { FaultsOfJob } from '@/app/(shop)/jobs/_parts/faults-of-job';
import { NeedsSummary } from '@/app/(shop)/jobs/_parts/needs-summary';
import { PoursOfJob } from '@/app/(shop)/jobs/_parts/pours-of-job';
import styles from '@/app/(shop)/jobs/_ui/jobs.module.css';
import { PURPOSE_WORDS, STAGE_WORDS, sayAway, sayWhose } from '@/app/(shop)/jobs/_ui/say-job';
import { Parts } from '@/app/(shop)/jobs/[id]/_ui/parts';
import { StageKey } from '@/app/(shop)/jobs/[id]/_ui/stage-key';
import { TimeLine } from '@/app/(shop)/jobs/[id]/_ui/time-line';
import { jobOfPage } from '@/app/(shop)/jobs/[id]/job-of-page';
import { partNeeds } from '@/app/(shop)/jobs/[id]/part-needs';
import { partRows } from '@/app/(shop)/jobs/[id]/part-rows';
import { sayDate } from '@/shared/calendar/say-date';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { lastUse } from '@/shared/timeline/last-use';
import { sayPieceSize } from '@/shared/wood/say-piece-size';

type Params = Promise<{ id: string }>;

export async function generateMetadata({ params }: { params: Params }): Promise<Metadata> {
  return { title: (await jobOfPage(params)).job.name };
}

/** One job: where it stands, its time line with what hangs on it, its parts, its needs, its pours, its wood. */
export default async function JobPage({ params }: { params: Params }) {
  const { job, pieces, head } = await jobOfPage(params);
  const { book } = await bookForPage();
  const { today, units, dateOrder: order } = head;
  const [timeline, parts, needs, promisedMaterials] = await Promise.all([
    readTimeline(book, job, today),
    readParts(book.read, job.id),
    standingNeeds(book.read, { jobId: job.id }),
    promisedCount(book, job.id),
  ]);
  const promised = pieces.filter((piece) => piece.facts.inStock);
  const taken = pieces.filter((piece) => !piece.facts.inStock);
  const open = job.state === 'open';
  const follows = lastUse(timeline.steps) !== undefined;
  const say = { today, order, prefer: units };
  const date = (day: typeof today) => `${sayDate(day, { order, today })}${open ? `, ${sayAway(day, today)}` : ''}`;
  return (
    <Page
      title={job.name}
      context={`${sayWhose(job)}, ${STAGE_WORDS[job.stage].toLowerCase()}`}
      back={{ href: '/jobs', words: 'Jobs' }}
    >
      {open && job.dayOfUse < today ? (
        <p className={styles.warning}>
          Its day of use has passed. What is pulled for it is judged for today until the day is changed.
        </p>
      ) : null}
      <Section>
        <StageKey jobId={job.id} name={job.name} stage={job.stage} promised={promised.length + promisedMaterials} />
      </Section>
      <Section title="What it is">
        <Facts
          facts={[
            { term: 'Due', value: job.dueOn ? date(job.dueOn) : 'No day was promised' },
            {
              term: 'Day of use',
              value: `${date(job.dayOfUse)}${follows ? ': the last lift or coat of its time line' : ''}`,
            },
            {
              term: 'Whose',
              value: job.client ? `${PURPOSE_WORDS[job.purpose]}, ${job.client}` : PURPOSE_WORDS[job.purpose],
            },
            ...(job.contact ? [{ term: 'Contact', value: job.contact }] : []),
            ...(job.note ? [{ term: 'Note', value: <span className={styles.note}>{job.note}</span> }] : []),
          ]}
        />
      </Section>
      <Section title="Time line">
        <TimeLine
          jobId={job.id}
          steps={timeline.steps}
          parts={parts.map(({ id, name }) => ({ id, name }))}
          facts={timeline.facts}
          stock={timeline.stockVerdicts.map((one) => sayStock(one, say))}
          order={order}
          closed={!open}
        />
        {open ? (
          <p className={styles.keys}>
            <LinkKey variant="ghost" href={`/jobs/${job.id}/finish`}>
              Plan finish coats
            </LinkKey>
          </p>
        ) : null}
      </Section>
      <Section title="Parts">
        <Parts
          key={JSON.stringify(parts.map(({ id, name }) => [id, name]))}
          jobId={job.id}
          parts={partRows(parts, units, partNeeds(needs, units))}
          prefer={units}
          open={open}
        />
      </Section>
      <NeedsSummary jobId={job.id} />
      <PoursOfJob jobId={job.id} />
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
        {open ? (
          <p className={styles.keys}>
            <LinkKey variant="ghost" href={`/on-hand/fits?job=${job.id}`}>
              What can its top be cut from?
            </LinkKey>
          </p>
        ) : null}
      </Section>
      <FaultsOfJob jobId={job.id} />
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
