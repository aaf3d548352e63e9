'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { receiveWood } from '@/app/_server/stock/receive-wood';
import { woodArrivalSchema } from '@/app/(shop)/arrive/wood/boards-schema';

export async function bookWood(key: string, input: unknown) {
  return act(async () => woodArrivalSchema(await typingContext()), key, input, receiveWood);
}
