'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { correctLotDates } from '@/app/_server/stock/correct-lot-dates';
import { lotDatesSchema } from '@/app/(shop)/lots/schema';

export async function lotDatesAction(key: string, input: unknown) {
  return act(async () => lotDatesSchema(await typingContext()), key, input, correctLotDates);
}
