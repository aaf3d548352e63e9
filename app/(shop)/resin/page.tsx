import type { Metadata } from 'next';
import Link from 'next/link';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { readSystems } from '@/app/_server/pours/read-systems';
import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import styles from '@/app/(shop)/jobs/[id]/pours/_ui/pours.module.css';
import { sayFrom, sayRatio } from '@/app/(shop)/resin/say-sheet';

export const metadata: Metadata = { title: 'Resin' };

/** The resin systems, each with what its data sheet says. */
export default async function ResinPage() {
  const { book } = await bookForPage();
  const systems = await readSystems(book);
  return (
    <Page title="Resin" back={{ href: '/products', words: 'Products' }}>
      {systems.length === 0 ? (
        <Empty
          title="The book knows no resin yet."
          toDo="Book in a part A and a part B under Arrive and name the system they belong to. What its sheet says is then written here."
        >
          <LinkKey href="/arrive">Book something in</LinkKey>
        </Empty>
      ) : (
        <ul className={styles.list} aria-label="Resin systems">
          {systems.map(({ id, name, sheet, parts }) => (
            <li key={id}>
              <Link href={`/resin/${id}`} className={styles.row}>
                <b>{name}</b>
                <span>{sheet ? sayFrom(sheet.facts) : 'no numbers yet'}</span>
                <span className={styles.soft}>
                  {sheet ? sayRatio(sheet.facts) : parts.map(({ name: product }) => product).join(', ')}
                </span>
              </Link>
            </li>
          ))}
        </ul>
      )}
    </Page>
  );
}
