import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { cache } from 'react';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { airOf } from '@/app/_server/climate/air-of';
import { roomPage } from '@/app/_server/climate/room-page';
import { listPlaces, placePage } from '@/app/_server/places/place-page';
import { placeChoices, placeTree } from '@/app/_server/places/place-tree';
import { Code } from '@/app/_ui/code';
import { Empty } from '@/app/_ui/empty';
import { Fold } from '@/app/_ui/fold';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { HistorySection } from '@/app/(shop)/_parts/history-section';
import { containerRow } from '@/app/(shop)/_parts/stock/container-row';
import { ContainerRows } from '@/app/(shop)/_parts/stock/container-rows';
import { pieceRow } from '@/app/(shop)/_parts/stock/piece-row';
import { DrawnHow, PieceWall } from '@/app/(shop)/_parts/stock/piece-wall';
import { AddPlace } from '@/app/(shop)/places/_ui/add-place';
import { AirSection } from '@/app/(shop)/places/_ui/air-section';
import { ChangePlace } from '@/app/(shop)/places/_ui/change-place';
import { NoteTemperature } from '@/app/(shop)/places/_ui/note-temperature';
import { PlaceTreeList } from '@/app/(shop)/places/_ui/place-tree-list';
import styles from '@/app/(shop)/places/_ui/places.module.css';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

type Params = { params: Promise<{ label: string }> };

const pageOf = cache(async (text: string) => {
  const { book, head } = await bookForPage();
  const label = parseOwnLabel(text);
  if (!label.ok || label.value.kind !== 'place') return undefined;
  const [found, places] = await Promise.all([placePage(book, label.value.code), listPlaces(book)]);
  if (!found) return undefined;
  const [now, room] = await Promise.all([
    airOf(book, found.place.id, head.today),
    roomPage(book, found.place.id, head.today),
  ]);
  return { found, places, head, code: label.value.code, now, room };
});

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  return { title: (await pageOf((await params).label))?.found.place.name ?? 'Not in this book' };
}

export default async function PlacePage({ params }: Params) {
  const page = await pageOf((await params).label);
  if (!page) notFound();
  const { found, places, head, code, now, room } = page;
  const { place, inside, children, containers, pieces, more } = found;
  const context = { today: head.today, order: head.dateOrder, prefer: head.units };
  const own = placeTree(places, place.id);
  const within = new Set([place.label, ...placeChoices(own).map(({ label }) => label)]);
  const all = placeChoices(placeTree(places));
  const count = place.things;
  const rows = pieces.map((piece) => pieceRow(piece, context));

  return (
    <Page title={place.name} context={<Code>{printOwnLabel(code)}</Code>} back={{ href: '/places', words: 'Places' }}>
      {inside.length > 0 ? (
        <nav aria-label="Inside of">
          <ol className={styles.path}>
            {inside.map((up) => (
              <li key={up.label}>
                <Link href={`/places/${up.label}`}>{up.name}</Link>
              </li>
            ))}
          </ol>
        </nav>
      ) : null}
      <div className={styles.keys}>
        <LinkKey href={`/arrive/move?place=${code}`}>Move things here</LinkKey>
        <LinkKey href={`/stocktake?place=${code}`} variant="ghost">
          Take stock
        </LinkKey>
        <LinkKey href={`/labels?codes=${code}`} variant="ghost">
          Print its label
        </LinkKey>
      </div>
      <Section title="What stands here" aside={`${count} ${count === 1 ? 'thing' : 'things'}`}>
        {containers.length + pieces.length === 0 ? (
          <Empty
            title="Nothing stands here."
            toDo={
              children.length > 0
                ? 'What is kept in the places inside it is shown on their own pages.'
                : 'Press Move things here, then scan one after the other.'
            }
          />
        ) : null}
        {containers.length > 0 ? (
          <ContainerRows
            rows={containers.map((line) => containerRow(line, context))}
            today={head.today}
            label={`Containers in ${place.name}`}
            named
          />
        ) : null}
        {rows.length > 0 ? (
          <>
            <DrawnHow rows={rows} />
            <PieceWall rows={rows} label={`Wood in ${place.name}`} />
          </>
        ) : null}
        {more ? (
          <p className={styles.more}>The first 200 of each are shown. On hand finds the rest by the place’s name.</p>
        ) : null}
      </Section>
      {own.length > 0 ? (
        <Section title="Places inside it">
          <PlaceTreeList branches={own} label={`Places inside ${place.name}`} />
        </Section>
      ) : null}
      <AirSection place={place} now={now} room={room} today={head.today} order={head.dateOrder} prefer={head.units} />
      <Fold title="How cold and how warm it was">
        <NoteTemperature label={code} prefer={head.units} />
      </Fold>
      <Fold title="Add a place inside it">
        <AddPlace choices={all} parentLabel={code} />
      </Fold>
      <Fold title="Rename it, or put it inside another">
        <ChangePlace
          key={`${place.name} ${place.kind} ${place.parentId}`}
          label={code}
          now={{ name: place.name, kind: place.kind, parentLabel: inside.at(-1)?.label ?? '' }}
          choices={all.filter(({ label }) => !within.has(label))}
        />
      </Fold>
      <HistorySection of={{ placeId: place.id }} />
    </Page>
  );
}
