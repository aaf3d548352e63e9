'use server';

import { act } from '@/app/_server/act';
import { addArriving } from '@/app/_server/arriving/add-arriving';
import { closeArriving } from '@/app/_server/arriving/close-arriving';
import { typingContext } from '@/app/_server/book/typing-context';
import { addArrivingSchema, closeArrivingSchema } from '@/app/(shop)/on-hand/arriving/schema';

export async function addArrivingAction(key: string, input: unknown) {
  return act(async () => addArrivingSchema(await typingContext()), key, input, addArriving);
}

export async function closeArrivingAction(key: string, input: unknown) {
  return act(closeArrivingSchema, key, input, closeArriving);
}
