import { addArriving } from '@/app/_server/arriving/add-arriving';
import type { DemoAct } from '@/app/_server/demo/demo-shop';
import { addNeed } from '@/app/_server/needs/add-need';
import { reserveNeeds } from '@/app/_server/needs/reserve-needs';
import type { StockUnit } from '@/shared/units/stock-unit';

const MM = 1_000_000;

const PRODUCTS: { job: string; product: string; amount: number; unit: StockUnit; note: string }[] = [
  { job: 'bar', product: 'inserts', amount: 24, unit: 'piece', note: 'Eight a trestle.' },
  { job: 'bar', product: 'discs-120', amount: 30, unit: 'piece', note: '' },
  { job: 'bar', product: 'discs-240', amount: 30, unit: 'piece', note: '' },
  { job: 'side', product: 'inserts', amount: 6, unit: 'piece', note: '' },
  { job: 'bench', product: 'discs-120', amount: 15, unit: 'piece', note: '' },
];

const PARTS: { job: string; part: 'A' | 'B'; milligrams: number }[] = [
  { job: 'side', part: 'A', milligrams: 420_000 },
  { job: 'side', part: 'B', milligrams: 210_000 },
];

/** What three jobs need beside their pours and coats, what two of them were promised, and what is on order. */
export const DEMO_NEEDS: readonly DemoAct[] = [
  {
    daysAgo: 1,
    hour: 14,
    by: 'maren',
    async act(shop) {
      for (const { job, product, ...need } of PRODUCTS) {
        const about = { jobId: shop.id(`job ${job}`), productId: shop.id(product) };
        await shop.run(addNeed, { ...need, ...about, kind: 'product', surface: '' });
      }
      const system = await shop.book.read.resinSystem.findFirst({
        where: { name: 'Quillow Deep' },
        select: { id: true },
      });
      for (const { job, ...part } of PARTS) {
        const about = { jobId: shop.id(`job ${job}`), systemId: system?.id ?? 0 };
        await shop.run(addNeed, { ...part, ...about, kind: 'part', surface: 'Knot in the top', note: '' });
      }
      const wood = { kind: 'wood' as const, widthNm: 45 * MM, thicknessNm: 25 * MM, note: 'Legs and rails.' };
      await shop.run(addNeed, {
        ...wood,
        jobId: shop.id('job side'),
        species: 'Walnut',
        form: 'board',
        lengthNm: 600 * MM,
        count: 3,
      });
      await shop.run(addNeed, {
        ...wood,
        jobId: shop.id('job bench'),
        species: 'Ash',
        form: '',
        lengthNm: 500 * MM,
        count: 2,
      });
    },
  },
  {
    daysAgo: 1,
    hour: 15,
    by: 'maren',
    async act(shop) {
      await shop.run(reserveNeeds, { jobId: shop.id('job bar') });
      await shop.run(reserveNeeds, { jobId: shop.id('job side') });
    },
  },
  {
    daysAgo: 1,
    hour: 16,
    by: 'tobi',
    async act(shop) {
      await shop.run(addArriving, {
        productId: shop.id('discs-120'),
        words: '',
        amount: 50,
        dueOn: shop.day(4),
        supplier: 'Pellmoor',
        costMinor: 3_150,
      });
      await shop.run(addArriving, {
        words: 'Walnut boards, two, from the Thornwick mill',
        amount: 2,
        dueOn: shop.day(10),
        supplier: 'Thornwick mill',
        costMinor: 16_800,
      });
    },
  },
];
