import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type KeptPhoto, keepPhoto } from '@/app/_server/stock/keep-photo';
import { err, ok } from '@/shared/result/result';

/** Puts a photo with a lot, a container or a piece. */
export const addPhoto: Command<{ stockId: number; photo: KeptPhoto }, { file: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'photo-added', request: input }, async (pen) => {
    const row = await pen.tx.stock.findUnique({ where: { id: input.stockId }, select: { id: true, label: true } });
    if (!row) return err({ code: 'not-found' });
    await pen.enter({ why: input.photo.caption, stockId: row.id }, { file: input.photo.file });
    await keepPhoto(pen, row.id, input.photo);
    return ok({ file: input.photo.file });
  });
