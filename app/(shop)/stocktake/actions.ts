'use server';

import { z } from 'zod';
import { act } from '@/app/_server/act';
import { theBook } from '@/app/_server/book/the-book';
import { typingContext } from '@/app/_server/book/typing-context';
import { beginStocktake } from '@/app/_server/stocktake/begin-stocktake';
import { type Countable, countable } from '@/app/_server/stocktake/countable';
import { giveUpStocktake } from '@/app/_server/stocktake/give-up-stocktake';
import { noteCounted } from '@/app/_server/stocktake/note-counted';
import { noteSeen } from '@/app/_server/stocktake/note-seen';
import { postStocktake } from '@/app/_server/stocktake/post-stocktake';
import { takeOffSighting } from '@/app/_server/stocktake/take-off-sighting';
import {
  beginSchema,
  countSchema,
  giveUpSchema,
  postSchema,
  seenSchema,
  takeOffSchema,
} from '@/app/(shop)/stocktake/schema';

export async function beginAction(key: string, input: unknown) {
  return act(beginSchema, key, input, beginStocktake);
}

export async function seeAction(key: string, input: unknown) {
  return act(seenSchema, key, input, noteSeen);
}

export async function countAction(key: string, input: unknown) {
  return act(() => countSchemaFor(input), key, input, noteCounted);
}

export async function takeOffAction(key: string, input: unknown) {
  return act(takeOffSchema, key, input, takeOffSighting);
}

export async function giveUpAction(key: string, input: unknown) {
  return act(giveUpSchema, key, input, giveUpStocktake);
}

export async function postAction(key: string, input: unknown) {
  return act(postSchema, key, input, postStocktake);
}

// Of a container that is not in the book nothing is known; the command refuses it in its own words.
const UNKNOWN: Countable = { unit: 'mg', tareMg: null, densityGramsPerLitre: null };

async function countSchemaFor(input: unknown) {
  const asked = z.object({ stockId: z.int() }).safeParse(input);
  const thing = asked.success ? await countable(await theBook(), asked.data.stockId) : undefined;
  return countSchema(await typingContext(), thing ?? UNKNOWN);
}
