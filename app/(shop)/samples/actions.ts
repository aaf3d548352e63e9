'use server';

import { act, type Command } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { keepSample } from '@/app/_server/samples/keep-sample';
import { type LookAtSample, type Looked, lookAtSample } from '@/app/_server/samples/look-at-sample';
import { sampleGone } from '@/app/_server/samples/sample-gone';
import { withPhoto } from '@/app/_server/stock/with-photo';
import { goneSchema, keepSampleSchema, lookSchema } from '@/app/(shop)/samples/schema';

export async function keepSampleAction(key: string, input: unknown) {
  return act(async () => keepSampleSchema(await typingContext()), key, input, keepSample);
}

type SentLook = Omit<LookAtSample, 'photo'> & { photo?: File };

const lookWithPhoto: Command<SentLook, Looked> = (book, by, { photo, ...look }) =>
  withPhoto(photo, 'Sample', (kept) => lookAtSample(book, by, { ...look, photo: kept }));

export async function lookAction(key: string, input: unknown) {
  return act(async () => lookSchema(await typingContext()), key, input, lookWithPhoto);
}

export async function goneAction(key: string, input: unknown) {
  return act(goneSchema, key, input, sampleGone);
}
