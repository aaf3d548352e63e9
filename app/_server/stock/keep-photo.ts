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

/** What makes two presses the same photo: what the picture is. Its file name is new at every press. */
export function whatPhotoIs(photo: KeptPhoto | undefined): readonly (string | number)[] | undefined {
  return photo && [photo.bytes, photo.width, photo.height, photo.caption];
}
