'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { noteFinishSheet } from '@/app/_server/finish/note-finish-sheet';
import { changeProduct } from '@/app/_server/products/change-product';
import { finishSheetSchema } from '@/app/(shop)/products/finish-sheet-schema';
import { changeSchema } from '@/app/(shop)/products/schema';

export async function changeProductAction(key: string, input: unknown) {
  return act(async () => changeSchema(await typingContext()), key, input, changeProduct);
}

export async function noteFinishSheetAction(key: string, input: unknown) {
  return act(async () => finishSheetSchema(await typingContext()), key, input, noteFinishSheet);
}
