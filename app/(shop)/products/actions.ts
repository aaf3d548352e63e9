'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { changeProduct } from '@/app/_server/products/change-product';
import { changeSchema } from '@/app/(shop)/products/schema';

export async function changeProductAction(key: string, input: unknown) {
  return act(async () => changeSchema(await typingContext()), key, input, changeProduct);
}
