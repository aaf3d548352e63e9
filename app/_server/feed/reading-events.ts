import type { FeedEvent } from '@/app/_server/feed/feed-event';
import { roomOfPlace } from '@/app/_server/watch/room-of-place';
import { woodToRead } from '@/app/_server/watch/wood-to-read';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { readingDue } from '@/shared/wood/reading-due';

/** The days wood is to be read with a meter: what is promised piece by piece, what dries by its room, the first of them. */
export async function readingEvents(book: OpenBook): Promise<FeedEvent[]> {
  const [wood, rooms] = await Promise.all([woodToRead(book), roomOfPlace(book)]);
  const events: FeedEvent[] = [];
  const drying = new Map<number, { name: string; label: string; day: CalendarDate; count: number; entryId: number }>();
  for (const piece of wood) {
    const day = readingDue({ ...piece, promised: piece.job !== null });
    // What was never read has no day of its own: Watch asks for it every day.
    if (day === undefined || day === 'never-read') continue;
    if (piece.job) {
      events.push({
        id: `reading-${piece.stockId}`,
        day,
        summary: `Read the moisture: ${piece.species} ${piece.form}, ${printOwnLabel(piece.label as OwnLabelCode)}`,
        description: [`Promised to ${piece.job.name}.`, piece.place ? `In ${piece.place}.` : '']
          .filter(Boolean)
          .join(' '),
        path: `/pieces/${piece.label}`,
        entryId: piece.entryId,
      });
      continue;
    }
    const room = piece.placeId === null ? undefined : rooms.get(piece.placeId);
    if (!room) continue;
    const known = drying.get(room.id);
    drying.set(room.id, {
      ...room,
      day: known && known.day < day ? known.day : day,
      count: (known?.count ?? 0) + 1,
      entryId: Math.max(known?.entryId ?? 0, piece.entryId),
    });
  }
  for (const [id, { name, label, day, count, entryId }] of drying) {
    events.push({
      id: `drying-${id}`,
      day,
      summary: `Read the drying wood: ${name}`,
      description: `${count} ${count === 1 ? 'piece is' : 'pieces are'} still wet there.`,
      path: `/places/${label}`,
      entryId,
    });
  }
  return events;
}
