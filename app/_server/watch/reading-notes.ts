import { type Room, roomOfPlace } from '@/app/_server/watch/room-of-place';
import type { NoteContext, WatchNote } from '@/app/_server/watch/watch-note';
import { type WoodToRead, woodToRead } from '@/app/_server/watch/wood-to-read';
import type { OpenBook } from '@/prisma/open-book';
import { daysBetween } from '@/shared/calendar/days-between';
import { sayDate } from '@/shared/calendar/say-date';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { readingDue } from '@/shared/wood/reading-due';

/** Wood that asks for a moisture reading: what is promised piece by piece, what dries in one line a room. */
export async function readingNotes(book: OpenBook, context: NoteContext): Promise<WatchNote[]> {
  const [wood, rooms] = await Promise.all([woodToRead(book), roomOfPlace(book)]);
  const due = wood.filter((piece) => {
    const day = readingDue({ ...piece, promised: piece.job !== null });
    return day === 'never-read' || (day !== undefined && day < context.today);
  });
  const drying = new Map<number | null, WoodToRead[]>();
  for (const piece of due) {
    if (piece.job) continue;
    const room = piece.placeId === null ? null : (rooms.get(piece.placeId)?.id ?? null);
    drying.set(room, [...(drying.get(room) ?? []), piece]);
  }
  const byId = new Map([...rooms.values()].map((room) => [room.id, room]));
  return [
    ...due.filter((piece) => piece.job).map((piece) => promisedNote(piece, context)),
    ...[...drying].map(([id, pieces]) => roomNote(id === null ? undefined : byId.get(id), pieces)),
  ];
}

function promisedNote(piece: WoodToRead, { today, dateOrder: order }: NoteContext): WatchNote {
  const { label, species, form, place, job, lastRead } = piece;
  const days = lastRead === null ? null : daysBetween(lastRead, today);
  return {
    id: `reading-${piece.stockId}-${lastRead ?? 'never'}`,
    href: `/pieces/${label}`,
    name: `${species} ${form}`,
    label: printOwnLabel(label as OwnLabelCode),
    place,
    word: 'care',
    says: days === null ? 'never read' : `read ${days} days ago`,
    why: lastRead
      ? `Promised to ${job?.name}; last read on ${sayDate(lastRead, { order, today })}.`
      : `Promised to ${job?.name}, and nobody has put a meter in it.`,
    toDo: 'Read it in its middle, away from the ends, and write it down on its page.',
  };
}

function roomNote(room: Room | undefined, pieces: readonly WoodToRead[]): WatchNote {
  const never = pieces.filter((piece) => piece.lastRead === null).length;
  const wet = pieces.length - never;
  const said = [
    wet > 0 ? `${wet} still wet and not read for over a month` : '',
    never > 0 ? `${never} never read` : '',
  ].filter(Boolean);
  const [first] = pieces;
  const one = pieces.length === 1 && first;
  return {
    id: `drying-${room?.id ?? 'nowhere'}`,
    href: one ? `/pieces/${first.label}` : room ? `/places/${room.label}` : '/on-hand?show=wood',
    name: room?.name ?? 'Wood in no place',
    label: one ? printOwnLabel(first.label as OwnLabelCode) : `${pieces.length} pieces`,
    place: null,
    word: 'care',
    says: `${pieces.length} to read`,
    why: `${said.join(', ')}.`.replace(/^./, (letter) => letter.toUpperCase()),
    toDo: 'Read each in its middle. What dries slower than it should is found this way.',
  };
}
