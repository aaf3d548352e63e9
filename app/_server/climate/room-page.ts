import { type AirOfPlace, airOfPlace } from '@/app/_server/climate/read-air';
import { type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

export type RoomPage = {
  /** Its own air or that of the nearest place around it; undefined where nobody has said any. */
  known: AirOfPlace | undefined;
  /** The wood that stands in its air and was read in the last year, at most so many pieces. */
  wood: PieceLine[];
};

const ROOM_DAYS = 365;
const MOST_WOOD = 60;

/** The air of a place over the last year, and the wood that stands in it. */
export async function roomPage(book: OpenBook, placeId: number, today: CalendarDate): Promise<RoomPage> {
  const known = await airOfPlace(book, { id: placeId }, today);
  const rows = await book.read.piece.findMany({
    where: {
      stock: { placeId: { in: await sharingItsAir(book, placeId) }, quantity: { gt: 0 } },
      readings: { some: { takenOn: { gte: addDays(today, -ROOM_DAYS) } } },
    },
    select: pieceSelect,
    orderBy: { stockId: 'asc' },
    take: MOST_WOOD,
  });
  return { known, wood: rows.map(pieceLine) };
}

/** The place and those inside it whose air is the same: what keeps air of its own stands in another. */
async function sharingItsAir(book: OpenBook, placeId: number): Promise<number[]> {
  const found = [placeId];
  for (let level = [placeId]; level.length > 0; ) {
    const rows = await book.read.place.findMany({
      where: {
        parentId: { in: level },
        climate: { none: { entry: { reversedBy: null } } },
        seasons: { none: { removedById: null } },
      },
      select: { id: true },
    });
    level = rows.map((row) => row.id);
    found.push(...level);
  }
  return found;
}
