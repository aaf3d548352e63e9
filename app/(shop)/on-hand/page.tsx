import type { Metadata } from 'next';
import Link from 'next/link';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { listSpecies } from '@/app/_server/stock/list-species';
import { Page } from '@/app/_ui/page';
import { OnHand } from '@/app/(shop)/on-hand/_ui/on-hand';
import styles from '@/app/(shop)/on-hand/_ui/on-hand.module.css';
import { readAsk } from '@/app/(shop)/on-hand/ask';
import { readShelf } from '@/app/(shop)/on-hand/shelf';

export const metadata: Metadata = { title: 'On hand' };

export default async function OnHandPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | string[]>>;
}) {
  const { book, head } = await bookForPage();
  const ask = readAsk(await searchParams);
  const [shelf, species] = await Promise.all([readShelf(book, head, ask), listSpecies(book)]);
  return (
    <Page
      title="On hand"
      settings
      context={
        <span className={styles.ways}>
          <Link href="/places">Places</Link>
          <Link href="/products">Products</Link>
          <Link href="/on-hand/buy">To buy</Link>
          <Link href="/on-hand/arriving">Arriving</Link>
        </span>
      }
    >
      {/* A write starts the list afresh: what was shown further down may have changed. */}
      <OnHand key={head.revision} ask={ask} shelf={shelf} today={head.today} species={species} prefer={head.units} />
    </Page>
  );
}
