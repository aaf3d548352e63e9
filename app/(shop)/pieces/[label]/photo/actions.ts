'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { measureByPhoto } from '@/app/_server/shapes/measure-by-photo';
import { photoMeasureSchema } from '@/app/(shop)/pieces/[label]/photo/schema';

export async function photoMeasureAction(key: string, input: unknown) {
  return act(async () => photoMeasureSchema(await typingContext()), key, input, measureByPhoto);
}
