import Link from 'next/link';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { loadJob } from '@/app/_server/jobs/read-jobs';
import { costsOf, joinNeeds } from '@/app/_server/needs/join-needs';
import { readNeeds } from '@/app/_server/needs/read-needs';
import { LinkKey } from '@/app/_ui/keys';
import { Section } from '@/app/_ui/section';
import styles from '@/app/(shop)/jobs/_parts/needs-summary.module.css';
import { ReserveKey } from '@/app/(shop)/jobs/[id]/needs/_ui/reserve-key';
import { needView } from '@/app/(shop)/jobs/[id]/needs/need-view';
import { sayCost } from '@/app/(shop)/jobs/[id]/needs/say-need';
import { sayStand } from '@/app/(shop)/jobs/[id]/needs/say-stand';
import type { CurrencyCode } from '@/shared/units/currency';

/** What a job needs and how that stands, in a few lines, with the one press that promises what is free. */
export async function NeedsSummary({ jobId }: { jobId: number }) {
  const { book, head } = await bookForPage();
  const [read, job] = await Promise.all([readNeeds(book, jobId, head), loadJob(book.read, jobId)]);
  const href = `/jobs/${jobId}/needs`;
  if (read.needs.length === 0) {
    return (
      <Section title="What it needs">
        <p className={styles.soft}>Nothing is on the list yet: wood, resin, finish, hardware.</p>
        <div className={styles.keys}>
          <LinkKey variant="ghost" href={href}>
            Write what it needs
          </LinkKey>
        </div>
      </Section>
    );
  }
  const views = joinNeeds(read.needs).map((joined) => needView(joined, read.jobs, head));
  const { inHand, toCome, atRisk } = costsOf(read.needs.map((each) => each.cost));
  const currency = head.currency as CurrencyCode;
  return (
    <Section title="What it needs" aside={<Link href={href}>All of it</Link>}>
      <p>
        <b>{sayStand(views)}</b>
      </p>
      <ul className={styles.list} aria-label="Needs of this job">
        {views.map((view) => (
          <li key={view.id}>
            <Link href={`${href}#need-${view.id}`}>
              <span className={styles.name}>
                <b>{view.amount}</b> {view.name}
              </span>
              <span className={styles.state} data-word={view.word}>
                {view.state}
              </span>
            </Link>
          </li>
        ))}
      </ul>
      <p className={styles.soft}>
        In hand {sayCost(inHand, currency)}, to come {sayCost(toCome, currency)}
        {atRisk.minor > 0 || !atRisk.known ? `, at risk ${sayCost(atRisk, currency)}` : ''}.
      </p>
      <div className={styles.keys}>
        {job?.state === 'open' && read.canReserve ? (
          <ReserveKey jobId={jobId} variant="ghost" words="Promise all that is free" />
        ) : null}
        <LinkKey variant="ghost" href={href}>
          Needs and stock
        </LinkKey>
      </div>
    </Section>
  );
}
