import type { DemoAct } from '@/app/_server/demo/demo-shop';
import { faultsOf } from '@/app/_server/faults/faults-of';
import { recordFault } from '@/app/_server/faults/record-fault';
import { settleFault } from '@/app/_server/faults/settle-fault';
import { readPour } from '@/app/_server/pours/read-pour';
import { nanometres } from '@/shared/units/nanometres';

/** A tray that came out of its form with a soft film, still open, and bubbles that were seen to. */
export const DEMO_FAULTS: readonly DemoAct[] = [
  {
    daysAgo: 7,
    hour: 12,
    by: 'tobi',
    async act(shop) {
      const lift = (await readPour(shop.book.read, shop.id('pour Tray')))?.lifts.find(({ nr }) => nr === 1);
      const about = { jobId: shop.id('job porthole'), liftId: lift?.id, foundOn: shop.on };
      await shop.run(recordFault, {
        ...about,
        kind: 'soft-spot',
        depth: nanometres(800_000),
        note: 'A film under the rim that takes a fingernail. Flakes of part A were left in the pour.',
      });
      await shop.run(recordFault, { ...about, kind: 'bubbles', note: 'Two, left of the middle.' });
      const found = await faultsOf(shop.book.read, { jobId: about.jobId });
      const bubbles = found.find(({ kind }) => kind === 'bubbles');
      if (bubbles)
        await shop.run(settleFault, { faultId: bubbles.id, how: 'Drilled out and filled, four days before sanding' });
    },
  },
];
