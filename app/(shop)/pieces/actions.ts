'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { takeBoards } from '@/app/_server/cuts/take-boards';
import { noteSellerFigures } from '@/app/_server/shapes/seller-figures';
import { changePiece } from '@/app/_server/stock/change-piece';
import { givePiece } from '@/app/_server/stock/give-piece';
import { recordReading } from '@/app/_server/stock/record-reading';
import { changePieceSchema, giveSchema, readingSchema, takeBoardsSchema } from '@/app/(shop)/pieces/schema';
import { sellerSchema } from '@/app/(shop)/pieces/seller-schema';

export async function readingAction(key: string, input: unknown) {
  return act(async () => readingSchema(await typingContext()), key, input, recordReading);
}

export async function giveAction(key: string, input: unknown) {
  return act(giveSchema, key, input, givePiece);
}

export async function changePieceAction(key: string, input: unknown) {
  return act(async () => changePieceSchema(await typingContext()), key, input, changePiece);
}

export async function sellerAction(key: string, input: unknown) {
  return act(async () => sellerSchema(await typingContext()), key, input, noteSellerFigures);
}

export async function takeBoardsAction(key: string, input: unknown) {
  return act(takeBoardsSchema, key, input, takeBoards);
}
