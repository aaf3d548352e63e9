'use server';

import { act, type Command } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { addSentPhoto } from '@/app/_server/stock/add-photo';
import { changeHold } from '@/app/_server/stock/change-hold';
import { discard } from '@/app/_server/stock/discard';
import { moveStock } from '@/app/_server/stock/move-stock';
import { type RecordInspection, recordInspection } from '@/app/_server/stock/record-inspection';
import { withPhoto } from '@/app/_server/stock/with-photo';
import { discardSchema, holdSchema, inspectionSchema, moveSchema, photoSchema } from '@/app/(shop)/_parts/acts/schemas';

export async function moveAction(key: string, input: unknown) {
  return act(moveSchema, key, input, moveStock);
}

export async function holdAction(key: string, input: unknown) {
  return act(holdSchema, key, input, changeHold);
}

export async function discardAction(key: string, input: unknown) {
  return act(async () => discardSchema(await typingContext()), key, input, discard);
}

export async function photoAction(key: string, input: unknown) {
  return act(photoSchema, key, input, addSentPhoto);
}

type SentInspection = Omit<RecordInspection, 'photo'> & { photo?: File };

const inspectWithPhoto: Command<SentInspection, { passed: boolean }> = (book, by, { photo, ...inspection }) =>
  withPhoto(photo, inspection.kind === 'test-pour' ? 'Test pour' : 'Inspection', (kept) =>
    recordInspection(book, by, { ...inspection, photo: kept }),
  );

export async function inspectAction(key: string, input: unknown) {
  return act(async () => inspectionSchema(await typingContext()), key, input, inspectWithPhoto);
}
