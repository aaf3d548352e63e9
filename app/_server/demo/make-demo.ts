import { setUpBook } from '@/app/_server/book/set-up-book';
import { DEMO_BASE_AND_TOP } from '@/app/_server/demo/demo-base-and-top';
import { DEMO_BOARDS } from '@/app/_server/demo/demo-boards';
import { DEMO_DELIVERIES } from '@/app/_server/demo/demo-deliveries';
import { DEMO_FAULTS } from '@/app/_server/demo/demo-faults';
import { DEMO_JOBS } from '@/app/_server/demo/demo-jobs';
import { DEMO_MATERIALS } from '@/app/_server/demo/demo-materials';
import { DEMO_NEEDS } from '@/app/_server/demo/demo-needs';
import { DEMO_PLACES } from '@/app/_server/demo/demo-places';
import { DEMO_POURS } from '@/app/_server/demo/demo-pours';
import { DEMO_PRODUCTS } from '@/app/_server/demo/demo-products';
import { DEMO_PULLS } from '@/app/_server/demo/demo-pulls';
import { DEMO_ROOMS } from '@/app/_server/demo/demo-rooms';
import { DEMO_SAMPLES } from '@/app/_server/demo/demo-samples';
import { DEMO_TIME_ZONE, type DemoAct, liveThrough } from '@/app/_server/demo/demo-shop';
import { DEMO_SLABS } from '@/app/_server/demo/demo-slabs';
import { DEMO_STOCKTAKES } from '@/app/_server/demo/demo-stocktake';
import { DEMO_TIME_LINES } from '@/app/_server/demo/demo-time-lines';
import { DEMO_WOOD } from '@/app/_server/demo/demo-wood';
import type { OpenBook } from '@/prisma/open-book';

const BEGIN: DemoAct = {
  daysAgo: 240,
  hour: 8,
  by: 'maren',
  act: (shop) =>
    shop.run(setUpBook, {
      name: 'Sallow Bank Workshop',
      timeZone: DEMO_TIME_ZONE,
      units: 'metric',
      currency: 'GBP',
      demo: true,
    }),
};

/**
 * Begins a book with a made-up workshop to look at: some eight months of its life, written through the same commands as
 * any other, each at its own time, so that every rule and the ledger hold. The same every time but for its dates, which are laid
 * out around `now`. Throws when there is a book already.
 */
export function makeDemo(book: OpenBook, now: Date): Promise<void> {
  return liveThrough(book, now, [
    BEGIN,
    ...DEMO_PLACES,
    ...DEMO_PRODUCTS,
    ...DEMO_JOBS,
    ...DEMO_DELIVERIES,
    ...DEMO_MATERIALS,
    ...DEMO_WOOD,
    ...DEMO_SLABS,
    ...DEMO_BOARDS,
    ...DEMO_ROOMS,
    ...DEMO_PULLS,
    ...DEMO_POURS,
    ...DEMO_FAULTS,
    ...DEMO_TIME_LINES,
    ...DEMO_BASE_AND_TOP,
    ...DEMO_NEEDS,
    ...DEMO_SAMPLES,
    ...DEMO_STOCKTAKES,
  ]);
}
