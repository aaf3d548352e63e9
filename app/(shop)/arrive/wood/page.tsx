import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { listPlaces } from '@/app/_server/places/place-page';
import { listSpecies } from '@/app/_server/stock/list-species';
import { placeOptions } from '@/app/(shop)/arrive/place-options';
import { WoodFlow } from '@/app/(shop)/arrive/wood/_ui/wood-flow';

export const metadata: Metadata = { title: 'Wood came in' };

/** Slabs, boards, sheets and offcuts as they come through the door. */
export default async function WoodPage() {
  const { book, head } = await bookForPage();
  const [places, species] = await Promise.all([listPlaces(book), listSpecies(book)]);
  return (
    <WoodFlow
      shop={{ today: head.today, order: head.dateOrder, prefer: head.units, currency: head.currency }}
      places={placeOptions(places)}
      species={species}
    />
  );
}
