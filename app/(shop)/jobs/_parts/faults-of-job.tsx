import { bookForPage } from '@/app/_server/book/book-for-page';
import { faultsOf } from '@/app/_server/faults/faults-of';
import { LinkKey } from '@/app/_ui/keys';
import { Section } from '@/app/_ui/section';
import { FaultList } from '@/app/(shop)/faults/_parts/fault-list';
import styles from '@/app/(shop)/faults/_ui/faults.module.css';

/** What was found wrong with a job, and where its material came from and went. */
export async function FaultsOfJob({ jobId }: { jobId: number }) {
  const { book, head } = await bookForPage();
  const faults = await faultsOf(book.read, { jobId });
  const open = faults.filter(({ settled }) => !settled).length;
  return (
    <Section title="Faults" aside={open > 0 ? `${open} open` : undefined}>
      {faults.length === 0 ? (
        <p className={styles.soft}>Nothing wrong was found. A soft spot or a crack that is, is written down here.</p>
      ) : (
        <FaultList faults={faults} head={head} traced />
      )}
      <div className={styles.keys}>
        <LinkKey variant="ghost" href={`/faults/new?job=${jobId}`}>
          Write a fault down
        </LinkKey>
        <LinkKey variant="ghost" href={`/trace/job/${jobId}`}>
          Trace it
        </LinkKey>
      </div>
    </Section>
  );
}
