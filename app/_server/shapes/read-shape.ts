import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';

/** How the outline of a piece that counts was measured, and the straightened photo that lies under it. */
export type ShapeFacts = {
  source: 'stations' | 'photo' | 'cut';
  measuredOn: CalendarDate;
  who: string;
  /** Places in micrometres of the drawing. */
  photo: { file: string; left: number; right: number; bottom: number; top: number } | null;
  /** Worst miss of a mark on that photo, micrometres. */
  photoErrorUm: number | null;
  /** How often it was measured. */
  measurings: number;
};

export async function readShape(book: OpenBook, stockId: number, timeZone: string): Promise<ShapeFacts | undefined> {
  const [shape, measurings] = await Promise.all([
    book.read.shape.findFirst({
      where: { countsFor: { stockId } },
      select: {
        source: true,
        photoPlace: true,
        photoErrorUm: true,
        photo: { select: { file: true } },
        entry: { select: { happenedAt: true, who: true } },
      },
    }),
    book.read.shape.count({ where: { pieceId: stockId } }),
  ]);
  if (!shape) return undefined;
  const { source, photo, photoPlace, photoErrorUm, entry } = shape;
  return {
    source: source as ShapeFacts['source'],
    measuredOn: dateIn(timeZone, entry.happenedAt),
    who: entry.who,
    photo: photo && photoPlace ? { file: photo.file, ...JSON.parse(photoPlace) } : null,
    photoErrorUm,
    measurings,
  };
}
