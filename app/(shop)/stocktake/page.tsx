import type { Metadata } from 'next';
import Link from 'next/link';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { listPlaces } from '@/app/_server/places/place-page';
import { placeChoices, placeTree } from '@/app/_server/places/place-tree';
import { listStocktakes, type StocktakeLine } from '@/app/_server/stocktake/list-stocktakes';
import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { sayWhen } from '@/app/(shop)/_parts/history/say-when';
import { BeginWalk } from '@/app/(shop)/stocktake/_ui/begin-walk';
import styles from '@/app/(shop)/stocktake/_ui/stocktake.module.css';

export const metadata: Metadata = { title: 'Stocktake' };

type Query = Promise<Record<string, string | string[] | undefined>>;

/** The stocktakes that go on, a new one, and those behind. `?place=P…` chooses its place. */
export default async function StocktakesPage({ searchParams }: { searchParams: Query }) {
  const { book, head } = await bookForPage();
  const [{ open, closed }, places, query] = await Promise.all([listStocktakes(book), listPlaces(book), searchParams]);
  const choices = placeChoices(placeTree(places));
  const asked = [query.place ?? []].flat()[0];
  const context = { today: head.today, order: head.dateOrder, prefer: head.units, timeZone: head.timeZone };
  const when = (at: Date) => sayWhen(at.toISOString(), context);
  return (
    <Page title="Stocktake" back={{ href: '/places', words: 'Places' }}>
      {open.length > 0 ? (
        <Section title="Going on" aside={`${open.length}`}>
          <Lines
            label="Going on"
            lines={open}
            says={({ begunAt, begunBy, seen }) => `Begun by ${begunBy}, ${when(begunAt)}; ${seen} seen until now.`}
          />
        </Section>
      ) : null}
      <Section title="Walk a place">
        {places.length === 0 ? (
          <Empty
            title="There are no places yet."
            toDo="A stocktake walks a place and compares what stands there with the book. Add the room or the shelf first."
          >
            <LinkKey href="/places">Add a place</LinkKey>
          </Empty>
        ) : (
          <>
            <p>
              Scan what is there, weigh what is open. Nothing is written off or moved before you have seen the
              differences and posted them, with a reason.
            </p>
            <BeginWalk choices={choices} placeLabel={choices.some((one) => one.label === asked) ? (asked ?? '') : ''} />
          </>
        )}
      </Section>
      {closed.length > 0 ? (
        <Section title="Behind">
          <Lines
            label="Behind"
            lines={closed}
            says={({ closed: end }) =>
              end ? `${end.posted ? 'Posted' : 'Given up'} by ${end.by}, ${when(end.at)}.` : ''
            }
          />
        </Section>
      ) : null}
    </Page>
  );
}

function Lines({
  lines,
  says,
  label,
}: {
  lines: readonly StocktakeLine[];
  says: (line: StocktakeLine) => string;
  label: string;
}) {
  return (
    <ul className={styles.rows} aria-label={label}>
      {lines.map((line) => (
        <li key={line.stocktake} className={styles.row}>
          <div className={styles.what}>
            <Link href={`/stocktake/${line.stocktake}`} className={styles.link}>
              {line.place}
            </Link>
            <span className={styles.soft}>Number {line.stocktake}</span>
          </div>
          <p>{says(line)}</p>
        </li>
      ))}
    </ul>
  );
}
