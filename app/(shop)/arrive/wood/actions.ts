'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { receiveWood } from '@/app/_server/stock/receive-wood';
import { woodSchema } from '@/app/(shop)/arrive/wood/schema';

export async function bookWood(key: string, input: unknown) {
  return act(async () => woodSchema(await typingContext()), key, input, receiveWood);
}
