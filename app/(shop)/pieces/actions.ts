'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { givePiece } from '@/app/_server/stock/give-piece';
import { recordReading } from '@/app/_server/stock/record-reading';
import { giveSchema, readingSchema } from '@/app/(shop)/pieces/schema';

export async function readingAction(key: string, input: unknown) {
  return act(async () => readingSchema(await typingContext()), key, input, recordReading);
}

export async function giveAction(key: string, input: unknown) {
  return act(giveSchema, key, input, givePiece);
}
