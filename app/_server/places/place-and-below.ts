import type { WriteTransaction } from '@/prisma/open-book';

/** The ids of a place and of every place inside it. */
export async function placeAndBelow(tx: Pick<WriteTransaction, 'place'>, placeId: number): Promise<number[]> {
  const found = [placeId];
  for (let level = [placeId]; level.length; ) {
    const rows = await tx.place.findMany({ where: { parentId: { in: level } }, select: { id: true } });
    level = rows.map((row) => row.id).filter((id) => !found.includes(id));
    found.push(...level);
  }
  return found;
}
