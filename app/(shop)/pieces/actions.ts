'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { changePiece } from '@/app/_server/stock/change-piece';
import { givePiece } from '@/app/_server/stock/give-piece';
import { recordReading } from '@/app/_server/stock/record-reading';
import { changePieceSchema, giveSchema, readingSchema } from '@/app/(shop)/pieces/schema';

export async function readingAction(key: string, input: unknown) {
  return act(async () => readingSchema(await typingContext()), key, input, recordReading);
}

export async function giveAction(key: string, input: unknown) {
  return act(giveSchema, key, input, givePiece);
}

export async function changePieceAction(key: string, input: unknown) {
  return act(async () => changePieceSchema(await typingContext()), key, input, changePiece);
}
