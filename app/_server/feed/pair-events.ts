import type { FeedEvent } from '@/app/_server/feed/feed-event';
import { newestOfContainers, newestOfProducts } from '@/app/_server/feed/newest-entries';
import { pairsToRetest } from '@/app/_server/watch/pairs-to-retest';
import type { OpenBook } from '@/prisma/open-book';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** What is longer past than this is Watch's matter, not a calendar's. */
const BACK_DAYS = 30;

/** The day each pair of lots is to be poured together again: one event a pair, whose day a newer test moves. */
export async function pairEvents(book: OpenBook, today: CalendarDate): Promise<FeedEvent[]> {
  const pairs = (await pairsToRetest(book, today)).filter(({ until }) => until >= addDays(today, -BACK_DAYS));
  const [newest, products] = await Promise.all([
    newestOfContainers(
      book,
      pairs.flatMap(({ stockIds }) => stockIds),
    ),
    newestOfProducts(
      book,
      pairs.flatMap(({ lots }) => lots.map(({ productId }) => productId)),
    ),
  ]);
  return pairs.map(({ lots: [a, b], until, stockIds }) => ({
    id: `pair-${a.lotId}-${b.lotId}`,
    day: until,
    summary: `Test again together: ${sayLot(a)} with ${sayLot(b)}`,
    description: 'Mixed together they rest on a test pour of the two, which holds to this day. Pour one again.',
    path: `/lots/${a.lotId}`,
    entryId: Math.max(
      ...stockIds.map((id) => newest.get(id) ?? 0),
      ...[a, b].map(({ productId }) => products.get(productId) ?? 0),
    ),
  }));
}

const sayLot = ({ product, code }: { product: string; code: string | null }) =>
  code ? `${product}, lot ${code}` : product;
