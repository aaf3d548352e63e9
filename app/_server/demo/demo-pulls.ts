import type { DemoAct, DemoShop, Person } from '@/app/_server/demo/demo-shop';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { answerPull } from '@/app/_server/pull/answer-pull';
import { pullContainer } from '@/app/_server/pull/pull-container';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';

type Row = { daysAgo: number; hour?: number; by?: Person; job: string; key: string; asked: number; why?: string };

const KG = 1_000_000;
const ROWS: Row[] = [
  { daysAgo: 66, job: 'harbour', key: 'deep-a old 3', asked: 5 * KG },
  { daysAgo: 66, job: 'harbour', key: 'deep-b held 1', asked: 2 * KG },
  { daysAgo: 64, job: 'harbour', key: 'deep-a old 1', asked: 2.5 * KG },
  { daysAgo: 64, job: 'harbour', key: 'deep-b held 2', asked: KG },
  { daysAgo: 62, job: 'harbour', key: 'blue 1', asked: 40_000 },
  { daysAgo: 61, job: 'harbour', key: 'hardwax past 1', asked: 120_000 },
  { daysAgo: 15, job: 'tide', key: 'coat-a 1', asked: 320_000 },
  {
    daysAgo: 15,
    hour: 11,
    job: 'tide',
    key: 'coat-b past 1',
    asked: 160_000,
    why: 'Test pour came out hard and clear; a door panel, not a top.',
  },
  { daysAgo: 3, job: 'tiles', key: 'coat-a 2', asked: 90_000 },
  { daysAgo: 3, job: 'tiles', key: 'coat-b new 1', asked: 45_000 },
  { daysAgo: 3, job: 'tiles', key: 'copper 1', asked: 6_000 },
  { daysAgo: 2, job: 'desk', key: 'deep-a new 1', asked: 3.4 * KG },
  { daysAgo: 2, job: 'desk', key: 'deep-b new 1', asked: 1.36 * KG },
  { daysAgo: 2, by: 'tobi', job: 'bench', key: 'discs-120 1', asked: 6 },
  // Its rags are still to be laid out on the day the demo is looked at.
  { daysAgo: 1, hour: 15, job: 'bench', key: 'two-part-oil 1', asked: 20_000 },
];

/** What was taken for which job: one on a test pour although its date had passed, one put back. */
export const DEMO_PULLS: readonly DemoAct[] = [
  ...ROWS.map(
    (row): DemoAct => ({
      daysAgo: row.daysAgo,
      hour: row.hour ?? 10,
      by: row.by ?? 'maren',
      act: (shop) => pull(shop, row),
    }),
  ),
  {
    daysAgo: 1,
    hour: 9,
    by: 'tobi',
    async act(shop) {
      await pull(shop, { daysAgo: 1, job: 'bench', key: 'deep-a new 2', asked: KG });
      const entry = await shop.book.read.entry.findFirstOrThrow({ where: { kind: 'pulled' }, orderBy: { id: 'desc' } });
      await shop.run(reverseEntry, { entryId: entry.id, why: 'Scanned the jug beside the right one.' });
    },
  },
];

/** Asks first, as a person does, and takes it on the answer seen. */
async function pull(shop: DemoShop, { job, key, asked, why }: Row): Promise<void> {
  const jobId = shop.id(`job ${job}`);
  const row = await shop.book.read.job.findUniqueOrThrow({ where: { id: jobId } });
  const ask = {
    label: shop.label(key),
    jobId,
    purpose: row.purpose as 'client' | 'own' | 'test',
    dayOfUse: row.dayOfUse as CalendarDate,
    asked,
  };
  const answer = unwrap(await answerPull(shop.book, ask, new Date(`${shop.on}T10:00:00Z`)));
  const override = why === undefined ? undefined : { reason: why, inspectionId: answer.testPour?.id ?? 0 };
  await shop.run(pullContainer, { ...ask, seen: answer.verdict.word, override });
}
