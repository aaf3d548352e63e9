import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { listPlaces } from '@/app/_server/places/place-page';
import { placeChoices, placeTree } from '@/app/_server/places/place-tree';
import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { AddPlace } from '@/app/(shop)/places/_ui/add-place';
import { PlaceTreeList } from '@/app/(shop)/places/_ui/place-tree-list';
import styles from '@/app/(shop)/places/_ui/places.module.css';

export const metadata: Metadata = { title: 'Places' };

export default async function PlacesPage() {
  const { book, head } = await bookForPage();
  const places = await listPlaces(book);
  const tree = placeTree(places);
  return (
    <Page title="Places" context={head.name} settings>
      <div className={styles.two}>
        <Section
          title="Where things stand"
          aside={places.length > 0 ? `${places.length} ${places.length === 1 ? 'place' : 'places'}` : null}
        >
          {tree.length === 0 ? (
            <Empty
              title="There are no places yet."
              toDo="A place is anywhere you put things and look for them again: a room, a rack, one shelf of a cabinet. Add the room first, then what is inside it; each gets a label to stick on and to scan."
            />
          ) : (
            <>
              <PlaceTreeList branches={tree} label="Places" />
              <p className={styles.more}>
                <LinkKey href="/stocktake" variant="ghost">
                  Take stock
                </LinkKey>{' '}
                <LinkKey href={`/labels?codes=${places.map(({ label }) => label).join(',')}`} variant="ghost">
                  {places.length === 1 ? 'Print its label' : 'Print their labels'}
                </LinkKey>
              </p>
            </>
          )}
        </Section>
        <Section title="Add a place">
          <AddPlace choices={placeChoices(tree)} />
        </Section>
      </div>
    </Page>
  );
}
