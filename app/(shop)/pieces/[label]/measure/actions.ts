'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { measureByStations } from '@/app/_server/shapes/measure-by-stations';
import { measureSchema } from '@/app/(shop)/pieces/[label]/measure/schema';

export async function measureAction(key: string, input: unknown) {
  return act(async () => measureSchema(await typingContext()), key, input, measureByStations);
}
