'use server';

import { randomUUID } from 'node:crypto';
import { act } from '@/app/_server/act';
import { changeServing } from '@/app/_server/book/change-serving';
import { changeSettings } from '@/app/_server/book/change-settings';
import { proveNow } from '@/app/_server/book/prove-now';
import { sayBookTrouble } from '@/app/_server/book/trouble-of-book';
import { typingContext } from '@/app/_server/book/typing-context';
import { changeHouseSizes } from '@/app/_server/cuts/change-house-sizes';
import { changeFeed } from '@/app/_server/feed/change-feed';
import type { Difference } from '@/app/_server/ledger/prove-book';
import { addClosedDays } from '@/app/_server/timeline/add-closed-days';
import { removeClosedDays } from '@/app/_server/timeline/remove-closed-days';
import { setClosedWeekdays } from '@/app/_server/timeline/set-closed-weekdays';
import { closedDaysSchema, closedSchema, closedWeekdaysSchema } from '@/app/(shop)/settings/closed-days-schema';
import { feedSchema, houseSchema, servingSchema, settingsSchema } from '@/app/(shop)/settings/schema';

export async function changeSettingsAction(key: string, input: unknown) {
  return act(settingsSchema, key, input, changeSettings);
}

export async function changeHouseAction(key: string, input: unknown) {
  return act(async () => houseSchema(await typingContext()), key, input, changeHouseSizes);
}

export async function changeServingAction(key: string, input: unknown) {
  return act(servingSchema, key, input, changeServing);
}

export async function changeFeedAction(key: string, input: unknown) {
  return act(feedSchema, key, input, changeFeed);
}

export async function setClosedWeekdaysAction(key: string, input: unknown) {
  return act(closedWeekdaysSchema, key, input, setClosedWeekdays);
}

export async function addClosedDaysAction(key: string, input: unknown) {
  return act(closedDaysSchema, key, input, addClosedDays);
}

export async function removeClosedDaysAction(key: string, input: unknown) {
  return act(closedSchema, key, input, removeClosedDays);
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
