import type { Pen } from '@/app/_server/ledger/write-entry';

/** A photo already checked and written under the book's photos. */
export type KeptPhoto = { file: string; width: number; height: number; bytes: number; caption: string };

/** Writes that a photo belongs to a thing and answers its id. The entry must have been written. */
export async function keepPhoto(pen: Pen, stockId: number, photo: KeptPhoto): Promise<number> {
  const { id } = await pen.tx.photo.create({
    data: { stockId, entryId: pen.entryId, ...photo },
    select: { id: true },
  });
  return id;
}
