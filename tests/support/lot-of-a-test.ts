import { receiveContainers } from '@/app/_server/stock/receive-containers';
import type { OpenBook } from '@/prisma/open-book';
import { by, day, must, TODAY } from '@/tests/support/test-book';

/** Another jug of a lot, sealed, as it comes through the door. */
export async function anotherOf(book: OpenBook, lotId: number) {
  const lot = await book.read.lot.findUniqueOrThrow({ where: { stockId: lotId } });
  const { containers, ...received } = must(
    await receiveContainers(book, by(), {
      productId: lot.productId,
      lotCode: lot.code ?? '',
      dates: { bestBefore: { date: day('2027-06-01'), precision: 'day', confirmed: true } },
      count: 1,
      size: 2_500_000,
      receivedOn: TODAY,
    }),
  );
  return { ...received, stockId: containers[0]?.stockId ?? 0, label: containers[0]?.label ?? '' };
}
