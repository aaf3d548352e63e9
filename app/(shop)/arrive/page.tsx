import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { whatWasScanned } from '@/app/_server/codes/what-was-scanned';
import { listPlaces } from '@/app/_server/places/place-page';
import { arrivalProduct } from '@/app/_server/products/arrival-product';
import { ArriveFlow, type ArriveFlowProps } from '@/app/(shop)/arrive/_ui/arrive-flow';
import { placeOptions } from '@/app/(shop)/arrive/place-options';

export const metadata: Metadata = { title: 'Arrive' };

type Query = Promise<Record<string, string | string[] | undefined>>;

/** What just came through the door? `/arrive?code=…&sym=…` begins with a scan, `/arrive?product=12` with a product. */
export default async function ArrivePage({ searchParams }: { searchParams: Query }) {
  const { book, head } = await bookForPage();
  const query = await searchParams;
  const one = (name: string) => [query[name] ?? []].flat()[0];
  const text = one('code')?.slice(0, 8192);
  const symbology = one('sym')?.slice(0, 8);
  const productId = Number(one('product'));
  let start: ArriveFlowProps['start'];
  if (text) {
    const scan = { text, symbology, source: 'wedge' as const };
    start = { scan, scanned: await whatWasScanned(book, scan, head.today) };
  } else if (Number.isSafeInteger(productId) && productId > 0) {
    const product = await arrivalProduct(book, productId);
    start = product && { product };
  }
  return (
    <ArriveFlow
      key={`${symbology ?? ''} ${text ?? productId}`}
      shop={{ today: head.today, order: head.dateOrder, prefer: head.units, currency: head.currency }}
      places={placeOptions(await listPlaces(book))}
      start={start}
    />
  );
}
