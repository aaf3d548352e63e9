'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { addNeed } from '@/app/_server/needs/add-need';
import { changeNeed } from '@/app/_server/needs/change-need';
import { removeNeed } from '@/app/_server/needs/remove-need';
import { reserveNeeds } from '@/app/_server/needs/reserve-needs';
import { release } from '@/app/_server/promises/release';
import { releaseAll } from '@/app/_server/promises/release-all';
import {
  addNeedSchema,
  changeNeedSchema,
  releaseAllSchema,
  releaseSchema,
  removeNeedSchema,
  reserveNeedsSchema,
} from '@/app/(shop)/jobs/[id]/needs/schema';

export async function addNeedAction(key: string, input: unknown) {
  return act(async () => addNeedSchema(await typingContext()), key, input, addNeed);
}

export async function changeNeedAction(key: string, input: unknown) {
  return act(async () => changeNeedSchema(await typingContext()), key, input, changeNeed);
}

export async function removeNeedAction(key: string, input: unknown) {
  return act(removeNeedSchema, key, input, removeNeed);
}

export async function reserveNeedsAction(key: string, input: unknown) {
  return act(reserveNeedsSchema, key, input, reserveNeeds);
}

export async function releaseAction(key: string, input: unknown) {
  return act(releaseSchema, key, input, release);
}

export async function releaseAllAction(key: string, input: unknown) {
  return act(releaseAllSchema, key, input, releaseAll);
}
