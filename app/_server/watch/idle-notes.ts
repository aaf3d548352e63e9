import { instantOf } from '@/app/_server/ledger/instant-of';
import type { NoteContext, WatchNote } from '@/app/_server/watch/watch-note';
import type { OpenBook } from '@/prisma/open-book';
import { dateIn } from '@/shared/calendar/date-in';
import { daysBetween } from '@/shared/calendar/days-between';
import { sayDate } from '@/shared/calendar/say-date';

/** Nothing was written of a job for longer than this, and stock waits for it. A rule of this house. */
const IDLE_DAYS = 45;

type Row = { id: number; name: string; pieces: number | bigint; containers: number | bigint; lastAt: unknown };

/** Open jobs that stock is promised to and that nobody has written anything of for a long time. */
export async function idleNotes(
  book: OpenBook,
  { today, timeZone, dateOrder: order }: NoteContext,
): Promise<WatchNote[]> {
  const rows = await book.read.$queryRaw<Row[]>`
    SELECT j."id", j."name",
      (SELECT COUNT(*) FROM "Stock" s WHERE s."ownerJobId" = j."id" AND s."quantity" > 0) AS "pieces",
      (SELECT COUNT(*) FROM "Promised" p WHERE p."jobId" = j."id" AND p."amount" > 0) AS "containers",
      (SELECT e."writtenAt" FROM "Entry" e WHERE e."jobId" = j."id" ORDER BY e."id" DESC LIMIT 1) AS "lastAt"
    FROM "Job" j WHERE j."state" = 'open' ORDER BY j."dayOfUse", j."id"`;
  return rows.flatMap(({ id, name, pieces, containers, lastAt }): WatchNote[] => {
    const things = Number(pieces) + Number(containers);
    if (things === 0 || !instantOf(lastAt)) return [];
    const last = dateIn(timeZone, new Date(instantOf(lastAt)));
    const days = daysBetween(last, today);
    if (days <= IDLE_DAYS) return [];
    return [
      {
        id: `idle-${id}-${last}`,
        href: `/jobs/${id}`,
        name,
        label: `${things} ${things === 1 ? 'thing' : 'things'} promised`,
        place: null,
        word: 'care',
        says: `quiet for ${days} days`,
        why: `Nothing was written of this job since ${sayDate(last, { order, today })}, and stock is kept for it.`,
        toDo: 'Go on with it, or free what it holds on its page, so that another job can have it.',
      },
    ];
  });
}
