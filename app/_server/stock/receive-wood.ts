import type { Command } from '@/app/_server/act';
import { type ReceiveBoards, receiveBoards } from '@/app/_server/stock/receive-boards';
import { type ReceivedPieces, type ReceivePieces, receivePieces } from '@/app/_server/stock/receive-pieces';
import { withPhoto } from '@/app/_server/stock/with-photo';

/** Wood of one size, and boards that were tallied one by one, with the picture as it was uploaded. */
export type ReceiveOneSize = Omit<ReceivePieces, 'photo'> & { photo?: Blob };
export type ReceiveTally = Omit<ReceiveBoards, 'photo'> & { photo?: Blob };
export type ReceiveWood = ReceiveOneSize | ReceiveTally;

/** Checks and keeps the picture, then books the wood in. Where nothing new is written, the picture goes again. */
export const receiveWood: Command<ReceiveWood, ReceivedPieces> = (book, by, { photo, ...input }) => {
  const form = 'as' in input ? (input.as === 'pack' ? 'pack' : 'board') : input.form;
  return withPhoto(photo, [input.species, form].join(' '), (kept) =>
    'as' in input
      ? receiveBoards(book, by, { ...input, photo: kept })
      : receivePieces(book, by, { ...input, photo: kept }),
  );
};
