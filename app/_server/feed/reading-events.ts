import type { FeedEvent } from '@/app/_server/feed/feed-event';
import { newestFromPlaces, newestOfPieces } from '@/app/_server/feed/newest-entries';
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
  const dated = wood.flatMap((piece) => {
    const day = readingDue({ ...piece, promised: piece.job !== null });
    // What was never read has no day of its own: Watch asks for it every day.
    return day === undefined || day === 'never-read' ? [] : [{ piece, day }];
  });
  const [newest, left] = await Promise.all([
    newestOfPieces(
      book,
      dated.map(({ piece }) => piece.stockId),
    ),
    newestFromPlaces(book),
  ]);
  const entryOf = ({ stockId }: { stockId: number }) => newest.get(stockId) ?? 0;
  // What left a room is in it no more, and changes its day all the same.
  const leftRoom = new Map<number, number>();
  for (const [placeId, entryId] of left) {
    const room = rooms.get(placeId);
    if (room) leftRoom.set(room.id, Math.max(leftRoom.get(room.id) ?? 0, entryId));
  }
  const events: FeedEvent[] = [];
  const drying = new Map<number, { name: string; label: string; day: CalendarDate; count: number; entryId: number }>();
  for (const { piece, day } of dated) {
    if (piece.job) {
      events.push({
        id: `reading-${piece.stockId}`,
        day,
        summary: `Read the moisture: ${piece.species} ${piece.form}, ${printOwnLabel(piece.label as OwnLabelCode)}`,
        description: [`Promised to ${piece.job.name}.`, piece.place ? `In ${piece.place}.` : '']
          .filter(Boolean)
          .join(' '),
        path: `/pieces/${piece.label}`,
        entryId: entryOf(piece),
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
      entryId: Math.max(known?.entryId ?? leftRoom.get(room.id) ?? 0, entryOf(piece)),
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
