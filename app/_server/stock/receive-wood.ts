import type { Command } from '@/app/_server/act';
import { type ReceivedPieces, type ReceivePieces, receivePieces } from '@/app/_server/stock/receive-pieces';
import { withPhoto } from '@/app/_server/stock/with-photo';

/** Pieces of wood with the picture as it was uploaded. */
export type ReceiveWood = Omit<ReceivePieces, 'photo'> & { photo?: Blob };

/** Checks and keeps the picture, then books the wood in. Where nothing new is written, the picture goes again. */
export const receiveWood: Command<ReceiveWood, ReceivedPieces> = (book, by, { photo, ...input }) =>
  withPhoto(photo, [input.species, input.form].join(' '), (kept) => receivePieces(book, by, { ...input, photo: kept }));
