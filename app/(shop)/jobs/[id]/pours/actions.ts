'use server';

import { act } from '@/app/_server/act';
import { theBook } from '@/app/_server/book/the-book';
import { typingContext } from '@/app/_server/book/typing-context';
import { keepPour } from '@/app/_server/pours/keep-pour';
import { pourLiftWithPhoto } from '@/app/_server/pours/pour-lift';
import { removePour } from '@/app/_server/pours/remove-pour';
import { scanForLift } from '@/app/_server/pours/scan-for-lift';
import { weighOutForLift } from '@/app/_server/pours/weigh-out';
import { problemOfError } from '@/app/_server/words/problem-of-error';
import { problemOfRefusal } from '@/app/_server/words/problem-of-refusal';
import { liftSchema, pourSchema, removeSchema, scanSchema, weighSchema } from '@/app/(shop)/jobs/[id]/pours/schema';
import type { PullAnswered } from '@/app/(shop)/pull/answer/route';

export async function keepPourAction(key: string, input: unknown) {
  return act(async () => pourSchema(await typingContext()), key, input, keepPour);
}

export async function removePourAction(key: string, input: unknown) {
  return act(removeSchema, key, input, removePour);
}

export async function weighAction(key: string, input: unknown) {
  return act(weighSchema, key, input, weighOutForLift);
}

export async function pourLiftAction(key: string, input: unknown) {
  return act(async () => liftSchema(await typingContext()), key, input, pourLiftWithPhoto);
}

/** What was scanned at the bench for a part of a lift. Writes nothing. */
export async function scanAction(input: unknown): Promise<PullAnswered> {
  try {
    const reply = await scanForLift(await theBook(), scanSchema.parse(input), new Date());
    return reply.ok ? { ok: true, reply: reply.value } : { ok: false, problem: await problemOfRefusal(reply.error) };
  } catch (error) {
    return { ok: false, problem: problemOfError(error) };
  }
}
