import type { WriteTransaction } from '@/prisma/open-book';

/** A place's name as it is written: no space before or after it, and one at most between its words. */
export const tidyPlaceName = (name: string): string => name.trim().replace(/\s+/g, ' ');

/** A name as it is compared: `Shelf 1`, `shelf 1` and `SHELF1` are one place to anybody looking for it. */
const compared = (name: string): string => name.normalize('NFKC').toLowerCase().replace(/\s+/g, '');

/** The name of another place beside it that would be taken for the same; undefined where there is none. */
export async function placeTwin(
  tx: Pick<WriteTransaction, 'place'>,
  name: string,
  parentId: number | null,
  own?: number,
): Promise<string | undefined> {
  const beside = await tx.place.findMany({ where: { parentId }, select: { id: true, name: true } });
  return beside.find((place) => place.id !== own && compared(place.name) === compared(name))?.name;
}
