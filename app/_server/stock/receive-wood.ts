import fs from 'node:fs/promises';
import path from 'node:path';
import type { Command } from '@/app/_server/act';
import { receivePhoto } from '@/app/_server/stock/receive-photo';
import { type ReceivedPieces, type ReceivePieces, receivePieces } from '@/app/_server/stock/receive-pieces';
import { bookFiles } from '@/prisma/book-files';

/** Pieces of wood with the picture as it was uploaded. */
export type ReceiveWood = Omit<ReceivePieces, 'photo'> & { photo?: Blob };

/** Checks and keeps the picture, then books the wood in. Where nothing new is written, the picture goes again. */
export const receiveWood: Command<ReceiveWood, ReceivedPieces> = async (book, by, { photo, ...input }) => {
  if (!photo) return receivePieces(book, by, input);
  const caption = [input.species, input.form].join(' ');
  const kept = await receivePhoto(Buffer.from(await photo.arrayBuffer()), caption);
  if (!kept.ok) return kept;
  const written = await receivePieces(book, by, { ...input, photo: kept.value }).catch(async (error: unknown) => {
    await forget(kept.value.file);
    throw error;
  });
  if (!written.ok || written.value.replayed) await forget(kept.value.file);
  return written;
};

const forget = (file: string) => fs.rm(path.join(bookFiles().photos, file), { force: true });
