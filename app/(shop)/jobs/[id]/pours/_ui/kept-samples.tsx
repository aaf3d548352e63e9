import Link from 'next/link';
import { LinkKey } from '@/app/_ui/keys';
import { Section } from '@/app/_ui/section';
import styles from '@/app/(shop)/jobs/[id]/pours/_ui/pours.module.css';

export type KeptSamplesProps = {
  samples: readonly { id: number; name: string }[];
  /** The lift a sample would be of. */
  last: number | undefined;
};

/** The samples kept of a pour that is poured; where there is none, the way to keep one. */
export function KeptSamples({ samples, last }: KeptSamplesProps) {
  return (
    <Section title="A sample of it">
      {samples.length > 0 ? (
        <ul className={styles.list} aria-label="Samples">
          {samples.map(({ id, name }) => (
            <li key={id}>
              <Link href={`/samples?one=${id}`}>{name}</Link>
            </li>
          ))}
        </ul>
      ) : (
        <>
          <p className={styles.soft}>
            None is kept. Leave a little of the last bucket in its cup to cure: should the top go soft or yellow, it
            tells whether the resin did.
          </p>
          <div className={styles.rowKeys}>
            <LinkKey variant="ghost" href={`/samples?lift=${last}`}>
              Keep a sample of it
            </LinkKey>
          </div>
        </>
      )}
    </Section>
  );
}
