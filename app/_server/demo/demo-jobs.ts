import type { DemoAct } from '@/app/_server/demo/demo-shop';
import { addJob } from '@/app/_server/jobs/add-job';
import { setStage } from '@/app/_server/jobs/set-stage';
import type { Purpose } from '@/shared/shelf-life/types/verdict';

type Row = { key: string; daysAgo: number; name: string; purpose: Purpose; client: string; use: number; note: string };

const ROWS: Row[] = [
  {
    key: 'harbour',
    daysAgo: 110,
    name: 'Harbour dining table',
    purpose: 'client',
    client: 'Ottoline Vane',
    use: -60,
    note: 'Two slabs, clear river, seats eight.',
  },
  {
    key: 'tide',
    daysAgo: 40,
    name: 'Tide cabinet',
    purpose: 'client',
    client: 'Perrin household',
    use: -14,
    note: 'Resin inlay in both doors.',
  },
  {
    key: 'desk',
    daysAgo: 34,
    name: 'Library river desk',
    purpose: 'client',
    client: 'Wexcombe Reading Room',
    use: 9,
    note: 'Last lift on the day of use; blue, two lifts.',
  },
  {
    key: 'bar',
    daysAgo: 28,
    name: 'Gannet Inn bar top',
    purpose: 'client',
    client: 'The Gannet Inn',
    use: 26,
    note: 'One slab, 3.4 m, coated both sides.',
  },
  {
    key: 'side',
    daysAgo: 21,
    name: 'Round walnut side table',
    purpose: 'client',
    client: 'Ilse Hartnoll',
    use: 41,
    note: '',
  },
  {
    key: 'bench',
    daysAgo: 50,
    name: 'Hall bench for home',
    purpose: 'own',
    client: '',
    use: 18,
    note: 'Whatever is left over.',
  },
  {
    key: 'tiles',
    daysAgo: 18,
    name: 'Colour test tiles',
    purpose: 'test',
    client: '',
    use: 4,
    note: 'Copper mica at three strengths.',
  },
  {
    key: 'shelves',
    daysAgo: 70,
    name: 'Alcove shelves',
    purpose: 'client',
    client: 'Dorcas Penhale',
    use: -5,
    note: '',
  },
];

/** Jobs behind and jobs ahead; two done, one dropped. */
export const DEMO_JOBS: readonly DemoAct[] = [
  ...ROWS.map(
    ({ key, daysAgo, use, ...fields }): DemoAct => ({
      daysAgo,
      hour: 8,
      by: 'maren',
      async act(shop) {
        const { jobId } = await shop.run(addJob, { ...fields, dayOfUse: shop.day(use) });
        shop.keep(`job ${key}`, jobId);
      },
    }),
  ),
  endOf('harbour', 45, 'delivered'),
  endOf('tide', 10, 'delivered'),
  endOf('shelves', 30, 'dropped'),
];

/** The job goes by every stage to its end, and is delivered, or it is dropped. */
function endOf(key: string, daysAgo: number, end: 'delivered' | 'dropped'): DemoAct {
  const stages = end === 'dropped' ? (['dropped'] as const) : (['making', 'ready', 'delivered'] as const);
  return {
    daysAgo,
    hour: 16,
    by: 'maren',
    async act(shop) {
      for (const stage of stages) await shop.run(setStage, { jobId: shop.id(`job ${key}`), stage, reason: '' });
    },
  };
}
