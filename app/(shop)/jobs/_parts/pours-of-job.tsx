import Link from 'next/link';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { loadJob } from '@/app/_server/jobs/read-jobs';
import { poursOfJob } from '@/app/_server/pours/read-pour';
import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Section } from '@/app/_ui/section';
import { LiftsDrawing } from '@/app/(shop)/jobs/[id]/pours/_ui/lifts-drawing';
import styles from '@/app/(shop)/jobs/[id]/pours/_ui/pours.module.css';
import { sayDay, sayGrams, sayStanding, stateOf } from '@/app/(shop)/jobs/[id]/pours/say-pour';

/** The pours of a job, each drawn as its lifts, with the way to plan another. */
export async function PoursOfJob({ jobId }: { jobId: number }) {
  const { book, head } = await bookForPage();
  const [pours, job] = await Promise.all([poursOfJob(book.read, jobId), loadJob(book.read, jobId)]);
  const { today, dateOrder: order, units } = head;
  const isOpen = job?.state === 'open';
  return (
    <Section title="Pours">
      {pours.length === 0 ? (
        <Empty title="No pour is planned." toDo="Plan one: what is to be filled gives its lifts, days and grams.">
          {isOpen ? <LinkKey href={`/jobs/${jobId}/pours/new`}>Plan a pour</LinkKey> : null}
        </Empty>
      ) : (
        <>
          <ul className={styles.list} aria-label="Pours of this job">
            {pours.map((pour) => (
              <li key={pour.id}>
                <Link href={`/jobs/${jobId}/pours/${pour.id}`} className={styles.row}>
                  <b>{pour.name}</b>
                  <span>{sayStanding(pour)}</span>
                  <span className={styles.soft}>
                    {pour.system.name}
                    {pour.part ? `, for ${pour.part}` : ''}
                  </span>
                  <span className={styles.soft}>
                    {sayGrams(pour.lifts.flatMap(({ batches }) => batches).reduce((sum, { total }) => sum + total, 0))}
                  </span>
                </Link>
                <LiftsDrawing
                  units={units}
                  lifts={pour.lifts.map((lift) => ({
                    nr: lift.nr,
                    depth: lift.depth,
                    day: sayDay(lift.poured?.on ?? lift.day, order, today),
                    state: stateOf(lift),
                  }))}
                />
              </li>
            ))}
          </ul>
          {isOpen ? (
            <div className={styles.rowKeys}>
              <LinkKey variant="ghost" href={`/jobs/${jobId}/pours/new`}>
                Plan another pour
              </LinkKey>
            </div>
          ) : null}
        </>
      )}
    </Section>
  );
}
