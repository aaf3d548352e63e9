'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { planCoats } from '@/app/_server/finish/plan-coats';
import { coatsSchema } from '@/app/(shop)/jobs/[id]/finish/schema';

export async function planCoatsAction(key: string, input: unknown) {
  return act(async () => coatsSchema(await typingContext()), key, input, planCoats);
}
