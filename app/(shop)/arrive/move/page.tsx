import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { whatWasScanned } from '@/app/_server/codes/what-was-scanned';
import { listPlaces } from '@/app/_server/places/place-page';
import type { Movable } from '@/app/(shop)/arrive/move/_ui/movable';
import { MoveThings } from '@/app/(shop)/arrive/move/_ui/move-things';
import { placeOptions } from '@/app/(shop)/arrive/place-options';

export const metadata: Metadata = { title: 'Move things' };

type Query = Promise<Record<string, string | string[] | undefined>>;

/** Scan a place, then things: each is moved there at once. `?things=C…,S…` and `?place=P…` begin with what is in hand. */
export default async function MovePage({ searchParams }: { searchParams: Query }) {
  const { book, head } = await bookForPage();
  const query = await searchParams;
  const asked = [query.things ?? []].flat().flatMap((list) => list.split(','));
  const waiting: Movable[] = [];
  for (const label of asked.slice(0, 50)) {
    const scanned = await whatWasScanned(book, { text: label.slice(0, 20) }, head.today);
    if (scanned.kind === 'container' || scanned.kind === 'piece') waiting.push(scanned);
  }
  const places = placeOptions(await listPlaces(book));
  const place = places.find((one) => one.label === [query.place ?? []].flat()[0]);
  return <MoveThings places={places} waiting={waiting} place={place?.label} />;
}
