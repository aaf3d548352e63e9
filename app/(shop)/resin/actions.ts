'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { keepSentSheet } from '@/app/_server/pours/keep-sheet';
import { sheetSchema } from '@/app/(shop)/resin/schema';

export async function keepSheetAction(key: string, input: unknown) {
  return act(async () => sheetSchema(await typingContext()), key, input, keepSentSheet);
}
