import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { cache } from 'react';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { stocktakePage } from '@/app/_server/stocktake/stocktake-page';
import { Page } from '@/app/_ui/page';
import { sayWhen } from '@/app/(shop)/_parts/history/say-when';
import { readId } from '@/app/(shop)/_parts/read-id';
import { Posted } from '@/app/(shop)/stocktake/_ui/posted';
import { Walk } from '@/app/(shop)/stocktake/_ui/walk';
import { sayProgress } from '@/app/(shop)/stocktake/say-walk';

type Params = { params: Promise<{ id: string }> };

const pageOf = cache(async (text: string) => {
  const { book, head } = await bookForPage();
  const number = readId(text);
  const found = number === undefined ? undefined : await stocktakePage(book, number);
  return found && { found, head };
});

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  const page = await pageOf((await params).id);
  return { title: page ? `Stocktake of ${page.found.stocktake.place}` : 'Not in this book' };
}

export default async function StocktakePage({ params }: Params) {
  const page = await pageOf((await params).id);
  if (!page) notFound();
  const { found, head } = page;
  const { stocktake, walk, posted, codes } = found;
  const { place } = stocktake;
  const back = { href: '/stocktake', words: 'Stocktakes' };
  if (walk) {
    return (
      <Page title={place} context={sayProgress(walk.things)} back={back}>
        <Walk stocktake={stocktake.stocktake} place={place} walk={walk} prefer={head.units} />
      </Page>
    );
  }
  const context = { today: head.today, order: head.dateOrder, prefer: head.units, timeZone: head.timeZone };
  const when = stocktake.closed ? sayWhen(stocktake.closed.at.toISOString(), context) : '';
  return (
    <Page title={place} context={`Stocktake ${stocktake.stocktake}`} back={back}>
      <Posted stocktake={stocktake} posted={posted} codes={codes} when={when} prefer={head.units} />
    </Page>
  );
}
