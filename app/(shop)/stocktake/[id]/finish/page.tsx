import type { Metadata } from 'next';
import { notFound, redirect } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { stocktakePage } from '@/app/_server/stocktake/stocktake-page';
import { Page } from '@/app/_ui/page';
import { readId } from '@/app/(shop)/_parts/read-id';
import { PostForm } from '@/app/(shop)/stocktake/_ui/post-form';
import { sayProgress } from '@/app/(shop)/stocktake/say-walk';

export const metadata: Metadata = { title: 'Compare and post' };

/** The differences of a walk, each with what can be done about it. */
export default async function FinishPage({ params }: { params: Promise<{ id: string }> }) {
  const { book, head } = await bookForPage();
  const number = readId((await params).id);
  const found = number === undefined ? undefined : await stocktakePage(book, number);
  if (!found) notFound();
  const { stocktake, walk } = found;
  if (!walk) redirect(`/stocktake/${stocktake.stocktake}`);
  const back = { href: `/stocktake/${stocktake.stocktake}`, words: 'the walk' };
  return (
    <Page title={`Compare ${stocktake.place}`} context={sayProgress(walk.things)} back={back}>
      <PostForm
        stocktake={stocktake.stocktake}
        place={stocktake.place}
        things={walk.things.filter(({ status }) => status !== 'here')}
        here={walk.things.length - walk.things.filter(({ status }) => status !== 'here').length}
        anySeen={walk.things.some(({ seen }) => seen !== null)}
        codes={walk.codes.length}
        asOf={head.revision}
        prefer={head.units}
      />
    </Page>
  );
}
