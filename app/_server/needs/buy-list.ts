import { standNeeds } from '@/app/_server/needs/stand-needs';
import { standingNeeds } from '@/app/_server/needs/standing-needs';
import { joinToBuy, type ToBuy } from '@/app/_server/needs/to-buy';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** One thing to buy for all jobs together, and which of them want it for which day, in the product's unit. */
export type BuyLine = ToBuy & {
  key: string;
  wanted: { jobId: number; job: string; on: CalendarDate; short: number }[];
};

/**
 * What to buy over all open jobs: their needs are set against the stock together, the earliest day first, so that nothing
 * free is counted for two. Packages are worked out for the sum. Jobs that are only asked for or quoted are left out unless
 * they are asked for.
 */
export async function buyList(
  book: OpenBook,
  head: { today: CalendarDate; currency: string },
  { unsure }: { unsure: boolean },
): Promise<{ lines: BuyLine[]; unsureJobs: number }> {
  const all = await standingNeeds(book.read, { job: { state: 'open' } });
  const counted = all.filter((need) => unsure || need.firm);
  const { needs } = await standNeeds(book.read, counted, head);
  const byThing = new Map<string, BuyLine>();
  for (const { need, buy } of needs) {
    if (!buy) continue;
    const key = buy.productId === null ? JSON.stringify([need.wood, need.system]) : `product-${buy.productId}`;
    const known = byThing.get(key);
    const wanted = [...(known?.wanted ?? [])];
    const same = wanted.findIndex((each) => each.jobId === need.jobId && each.on === need.on);
    const now = { jobId: need.jobId, job: need.job, on: need.on, short: buy.short + (wanted[same]?.short ?? 0) };
    if (same < 0) wanted.push(now);
    else wanted[same] = now;
    byThing.set(key, { ...(known ? joinToBuy([known, buy]) : buy), key, wanted });
  }
  const lines = [...byThing.values()].sort((a, b) =>
    a.by < b.by ? -1 : a.by > b.by ? 1 : a.product < b.product ? -1 : 1,
  );
  const left = new Set(all.filter((need) => !need.firm).map((need) => need.jobId));
  return { lines, unsureJobs: left.size };
}
