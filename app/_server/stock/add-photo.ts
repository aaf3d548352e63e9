import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type KeptPhoto, keepPhoto, whatPhotoIs } from '@/app/_server/stock/keep-photo';
import { withPhoto } from '@/app/_server/stock/with-photo';
import { err, ok } from '@/shared/result/result';

/** Puts a photo with a lot, a container or a piece. */
export const addPhoto: Command<{ stockId: number; photo: KeptPhoto }, { file: string }> = (
  book,
  by,
  { stockId, photo },
) =>
  writeEntry(book, { ...by, kind: 'photo-added', request: { stockId, photo: whatPhotoIs(photo) } }, async (pen) => {
    const row = await pen.tx.stock.findUnique({ where: { id: stockId }, select: { id: true, label: true } });
    if (!row) return err({ code: 'not-found' });
    await pen.enter({ why: photo.caption, stockId: row.id }, { file: photo.file });
    await keepPhoto(pen, row.id, photo);
    return ok({ file: photo.file });
  });

/** `addPhoto` of a picture as it was uploaded. */
export const addSentPhoto: Command<{ stockId: number; photo: Blob; caption: string }, { file: string }> = (
  book,
  by,
  { stockId, photo, caption },
) =>
  withPhoto(photo, caption, async (kept) =>
    kept ? addPhoto(book, by, { stockId, photo: kept }) : err({ code: 'photo-not-an-image', field: 'photo' }),
  );
