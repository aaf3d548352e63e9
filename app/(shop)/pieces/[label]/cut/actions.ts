'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { cutPiece } from '@/app/_server/cuts/cut-piece';
import { cutStraps } from '@/app/_server/cuts/cut-straps';
import { pairPieces, partPair } from '@/app/_server/cuts/pair-pieces';
import { outlineByLabel } from '@/app/_server/shapes/outline-by-label';
import { cutSchema, pairSchema, partSchema, resawSchema, strapsSchema } from '@/app/(shop)/pieces/[label]/cut/schema';

export async function cutAction(key: string, input: unknown) {
  return act(async () => cutSchema(await typingContext(), await outlineByLabel(input)), key, input, cutPiece);
}

export async function resawAction(key: string, input: unknown) {
  return act(async () => resawSchema(await typingContext()), key, input, cutPiece);
}

export async function strapsAction(key: string, input: unknown) {
  return act(strapsSchema, key, input, cutStraps);
}

export async function pairAction(key: string, input: unknown) {
  return act(pairSchema, key, input, pairPieces);
}

export async function partAction(key: string, input: unknown) {
  return act(partSchema, key, input, partPair);
}
