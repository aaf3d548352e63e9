import type { OpenBook } from '@/prisma/open-book';

export type Room = { id: number; name: string; label: string };

/** Which room each place is in: the outermost place around it, or itself. */
export async function roomOfPlace(book: OpenBook): Promise<Map<number, Room>> {
  const places = await book.read.place.findMany({ select: { id: true, parentId: true, name: true, label: true } });
  const byId = new Map(places.map((place) => [place.id, place]));
  const roomOf = (id: number): Room | undefined => {
    const place = byId.get(id);
    return place?.parentId ? (roomOf(place.parentId) ?? place) : place;
  };
  return new Map(places.flatMap(({ id }) => [[id, roomOf(id)]] as [number, Room][]));
}
