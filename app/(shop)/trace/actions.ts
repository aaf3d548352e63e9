'use server';

import { act } from '@/app/_server/act';
import { holdAll } from '@/app/_server/trace/hold-all';
import { releaseAll } from '@/app/_server/trace/release-all';
import { holdAllSchema, releaseAllSchema } from '@/app/(shop)/trace/schema';

export async function holdAllAction(key: string, input: unknown) {
  return act(holdAllSchema, key, input, holdAll);
}

export async function releaseAllAction(key: string, input: unknown) {
  return act(releaseAllSchema, key, input, releaseAll);
}
