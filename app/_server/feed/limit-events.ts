import type { FeedEvent } from '@/app/_server/feed/feed-event';
import { newestOfContainers } from '@/app/_server/feed/newest-entries';
import { readContainers } from '@/app/_server/stock/read-containers';
import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { assess } from '@/shared/shelf-life/assess';
import type { Limit } from '@/shared/shelf-life/types/limit';

/** What is longer past than this is Watch's matter, not a calendar's. */
const BACK_DAYS = 30;
const MOST = 3000;

const BASIS: Readonly<Record<Limit['basis'], string>> = {
  'use-by': 'The use-by printed on it.',
  'best-before': 'The best-before printed on it.',
  'stated-life': 'Made on, and its stated life.',
  'opened-life': 'Opened on, and its opened life.',
  inspection: 'It rests on a test, which holds to this day. Test it again.',
};

/**
 * The last good day of every container that is opened or promised to a job; what rests on a test, as its retest. That is
 * one matter, until when it may be trusted, and one event: a test that carries it further moves the day and the words.
 */
export async function limitEvents(book: OpenBook, today: CalendarDate): Promise<FeedEvent[]> {
  const lines = await readContainers(
    book.read,
    Prisma.sql`s."quantity" > 0 AND (s."opened" IS NOT NULL OR EXISTS (
      SELECT 1 FROM "Promised" pr WHERE pr."stockId" = c."stockId" AND pr."amount" > 0))`,
    { order: Prisma.sql`ORDER BY c."stockId"`, most: MOST },
  );
  const newest = await newestOfContainers(
    book,
    lines.map(({ stockId }) => stockId),
  );
  return lines.flatMap((line): FeedEvent[] => {
    const { governing } = assess({ ...line.candidate, purpose: 'client', dayOfUse: today, today });
    if (!governing || governing.lastGoodDay < addDays(today, -BACK_DAYS)) return [];
    const retest = governing.basis === 'inspection';
    const what = `${line.product}, ${printOwnLabel(line.label)}`;
    return [
      {
        id: `limit-${line.stockId}`,
        day: governing.lastGoodDay,
        summary: `${retest ? 'Test again' : 'Last good day'}: ${what}`,
        description: [BASIS[governing.basis], line.place ? `In ${line.place}.` : ''].filter(Boolean).join(' '),
        path: `/containers/${line.label}`,
        entryId: newest.get(line.stockId) ?? 0,
      },
    ];
  });
}
