import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { slabsOnWall, woodsOnWall } from '@/app/_server/stock/slabs-on-wall';
import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Wall } from '@/app/(shop)/on-hand/wall/_ui/wall';
import styles from '@/app/(shop)/on-hand/wall/_ui/wall.module.css';
import { WallForm } from '@/app/(shop)/on-hand/wall/_ui/wall-form';
import { readWallAsk } from '@/app/(shop)/on-hand/wall/wall-ask';
import { wallRow } from '@/app/(shop)/on-hand/wall/wall-row';

export const metadata: Metadata = { title: 'Wall of slabs' };

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

/** Every slab on hand, drawn to one scale. */
export default async function WallPage({ searchParams }: Props) {
  const { book, head } = await bookForPage();
  const { typed, ask, wrong } = readWallAsk(await searchParams, head.units);
  const [{ slabs, total }, woods] = await Promise.all([slabsOnWall(book, ask), woodsOnWall(book)]);
  const rows = slabs.map((slab) => wallRow(slab, head.units));
  const isAsked = typed.species !== '' || typed.thick !== '' || typed.free;
  return (
    <Page
      title="Wall of slabs"
      context={`${total.toLocaleString('en')} slab${total === 1 ? '' : 's'}`}
      back={{ href: '/on-hand?show=wood', words: 'On hand' }}
    >
      {woods.length === 0 ? (
        <Empty title="No slab is in the book yet." toDo="Book one in as it arrives. It is drawn from its measures.">
          <LinkKey href="/arrive/wood">Book in a slab</LinkKey>
        </Empty>
      ) : (
        <>
          <WallForm key={JSON.stringify(typed)} typed={typed} woods={woods} wrong={wrong} />
          {rows.length === 0 ? (
            <Empty title="No slab is like that." toDo={isAsked ? 'Ask for less, or show all of them.' : ''}>
              <LinkKey variant="ghost" href="/on-hand/wall">
                Show all
              </LinkKey>
            </Empty>
          ) : (
            <>
              <p className={styles.how}>
                {sayDrawn(rows)}
                {total > rows.length ? ` The first ${rows.length} are drawn.` : ''}
              </p>
              <Wall rows={rows} />
            </>
          )}
        </>
      )}
    </Page>
  );
}

function sayDrawn(rows: readonly { measured: boolean }[]): string {
  const measured = rows.filter((row) => row.measured).length;
  if (measured === rows.length) return 'Drawn to one scale from their outlines.';
  if (measured === 0) return 'Drawn to one scale from three widths, with a broken edge: measure an outline to see it.';
  return 'Drawn to one scale. A broken edge is a sketch from three widths.';
}
