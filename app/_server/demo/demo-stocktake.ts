import type { DemoAct, DemoShop } from '@/app/_server/demo/demo-shop';
import { placeAndBelow } from '@/app/_server/places/place-and-below';
import { beginStocktake } from '@/app/_server/stocktake/begin-stocktake';
import { noteCounted } from '@/app/_server/stocktake/note-counted';
import { noteSeen } from '@/app/_server/stocktake/note-seen';
import { postStocktake } from '@/app/_server/stocktake/post-stocktake';
import { stocktakePage } from '@/app/_server/stocktake/stocktake-page';

/** The things that stand in a place and under it, by the book. */
async function standing(shop: DemoShop, place: string) {
  const { id } = await shop.book.read.place.findUniqueOrThrow({ where: { label: shop.label(place) } });
  return shop.book.read.stock.findMany({
    where: { placeId: { in: await placeAndBelow(shop.book.read, id) }, quantity: { gt: 0 } },
    orderBy: { id: 'asc' },
    select: { id: true, label: true, quantity: true, opened: true },
  });
}

/** One walk posted, with an opened tin that held less than the book said; one that Tobi left half done. */
export const DEMO_STOCKTAKES: readonly DemoAct[] = [
  {
    daysAgo: 8,
    hour: 15,
    by: 'maren',
    async act(shop) {
      const { stocktake } = await shop.run(beginStocktake, { placeLabel: shop.label('finish-shelf') });
      const things = await standing(shop, 'finish-shelf');
      for (const { label } of things) await shop.run(noteSeen, { stocktake, text: label ?? '' });
      const open = things.find(({ opened, quantity }) => opened !== null && quantity > 100_000n);
      if (open) {
        const counted = Number(open.quantity) - 40_000;
        await shop.run(noteCounted, { stocktake, stockId: open.id, counted, grossMg: null });
      }
      const page = await stocktakePage(shop.book, stocktake);
      const head = await shop.book.read.book.findUniqueOrThrow({ where: { id: 1 }, select: { revision: true } });
      await shop.run(postStocktake, {
        stocktake,
        why: 'The open tin had been used for samples and not written down.',
        asOf: head.revision,
        choices: (page?.walk?.things ?? []).flatMap(({ stockId, delta, choices: [choice] }) =>
          choice ? [{ stockId, delta, choice }] : [],
        ),
      });
    },
  },
  {
    daysAgo: 1,
    hour: 14,
    by: 'tobi',
    async act(shop) {
      const { stocktake } = await shop.run(beginStocktake, { placeLabel: shop.label('cabinet-1') });
      const things = await standing(shop, 'cabinet-1');
      for (const { label } of things.slice(0, Math.ceil(things.length / 2)))
        await shop.run(noteSeen, { stocktake, text: label ?? '' });
      const open = things.find(({ opened, quantity }) => opened !== null && quantity > 500_000n);
      if (open) {
        await shop.run(noteSeen, { stocktake, text: open.label ?? '' });
        const counted = Number(open.quantity) - 150_000;
        await shop.run(noteCounted, { stocktake, stockId: open.id, counted, grossMg: null });
      }
      const [elsewhere] = await standing(shop, 'glue-shelf');
      if (elsewhere?.label) await shop.run(noteSeen, { stocktake, text: elsewhere.label });
      await shop.run(noteSeen, { stocktake, text: 'DECANTED-14' });
    },
  },
];
