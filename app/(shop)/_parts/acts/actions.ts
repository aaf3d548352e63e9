'use server';

import { act, type Command } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { addPhoto } from '@/app/_server/stock/add-photo';
import { changeHold } from '@/app/_server/stock/change-hold';
import { discard } from '@/app/_server/stock/discard';
import { moveStock } from '@/app/_server/stock/move-stock';
import { receivePhoto } from '@/app/_server/stock/receive-photo';
import { type RecordInspection, recordInspection } from '@/app/_server/stock/record-inspection';
import { discardSchema, holdSchema, inspectionSchema, moveSchema, photoSchema } from '@/app/(shop)/_parts/acts/schemas';

export async function moveAction(key: string, input: unknown) {
  return act(moveSchema, key, input, moveStock);
}

export async function holdAction(key: string, input: unknown) {
  return act(holdSchema, key, input, changeHold);
}

export async function discardAction(key: string, input: unknown) {
  return act(discardSchema, key, input, discard);
}

type SentPhoto = { stockId: number; photo: File; caption: string };

const keepSentPhoto: Command<SentPhoto, { file: string }> = async (book, by, { stockId, photo, caption }) => {
  const kept = await receivePhoto(Buffer.from(await photo.arrayBuffer()), caption, by.key);
  return kept.ok ? addPhoto(book, by, { stockId, photo: kept.value }) : kept;
};

export async function photoAction(key: string, input: unknown) {
  return act(photoSchema, key, input, keepSentPhoto);
}

type SentInspection = Omit<RecordInspection, 'photo'> & { photo?: File };

const inspectWithPhoto: Command<SentInspection, { passed: boolean }> = async (book, by, { photo, ...inspection }) => {
  const caption = inspection.kind === 'test-pour' ? 'Test pour' : 'Inspection';
  const kept = photo ? await receivePhoto(Buffer.from(await photo.arrayBuffer()), caption, by.key) : undefined;
  if (kept && !kept.ok) return kept;
  return recordInspection(book, by, { ...inspection, photo: kept?.value });
};

export async function inspectAction(key: string, input: unknown) {
  return act(inspectionSchema(await typingContext()), key, input, inspectWithPhoto);
}
