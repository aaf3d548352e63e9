'use server';

import { act } from '@/app/_server/act';
import { type ChoiceWords, explainShortage, explainTin } from '@/app/_server/allocation/explain-allocation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { reserve } from '@/app/_server/promises/reserve';
import { choiceSchema, promiseSchema } from '@/app/(shop)/jobs/allotted/schema';

export async function promiseAction(key: string, input: unknown) {
  return act(promiseSchema, key, input, reserve);
}

/** Why this tin, and what instead; undefined where the book has changed since the page was made. */
export async function explainTinAction(input: unknown): Promise<ChoiceWords | undefined> {
  const { book, head } = await bookForPage();
  const { today, dateOrder: order, units: prefer } = head;
  const choice = choiceSchema.safeParse(input);
  return choice.success ? explainTin(book, head, choice.data, { today, order, prefer }) : undefined;
}

export async function explainShortageAction(): Promise<string[][]> {
  const { book, head } = await bookForPage();
  const { today, dateOrder: order, units: prefer } = head;
  return explainShortage(book, head, { today, order, prefer });
}
