'use server';

import { randomUUID } from 'node:crypto';
import { act } from '@/app/_server/act';
import { changeServing } from '@/app/_server/book/change-serving';
import { changeSettings } from '@/app/_server/book/change-settings';
import { proveNow } from '@/app/_server/book/prove-now';
import { sayBookTrouble } from '@/app/_server/book/trouble-of-book';
import { typingContext } from '@/app/_server/book/typing-context';
import { changeHouseSizes } from '@/app/_server/cuts/change-house-sizes';
import type { Difference } from '@/app/_server/ledger/prove-book';
import { houseSchema, servingSchema, settingsSchema } from '@/app/(shop)/settings/schema';

export async function changeSettingsAction(key: string, input: unknown) {
  return act(settingsSchema, key, input, changeSettings);
}

export async function changeHouseAction(key: string, input: unknown) {
  return act(async () => houseSchema(await typingContext()), key, input, changeHouseSizes);
}

export async function changeServingAction(key: string, input: unknown) {
  return act(servingSchema, key, input, changeServing);
}

/** As many differences as a reader can take in; the log of `npm run prove` has them all. */
const MOST = 50;

export type ProofAnswer =
  | { ok: true; entries: number; movements: number; things: number; differing: number; differences: Difference[] }
  | { ok: false; happened: string; kept: string; toDo: string; reference?: string };

/** Checks every rule on the book. Reads only. */
export async function proveAction(): Promise<ProofAnswer> {
  try {
    const { differences, ...counts } = await proveNow();
    return { ok: true, ...counts, differing: differences.length, differences: differences.slice(0, MOST) };
  } catch (error) {
    const reference = randomUUID().slice(0, 8);
    console.error(`[${reference}]`, error);
    return { ok: false, ...sayBookTrouble(error, reference) };
  }
}
