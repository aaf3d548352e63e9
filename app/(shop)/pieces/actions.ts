'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { takeBoards } from '@/app/_server/cuts/take-boards';
import { noteSellerFigures } from '@/app/_server/shapes/seller-figures';
import { changePiece } from '@/app/_server/stock/change-piece';
import { givePiece } from '@/app/_server/stock/give-piece';
import { nameWood } from '@/app/_server/stock/name-wood';
import { noteSawn } from '@/app/_server/stock/note-sawn';
import { noteWarp } from '@/app/_server/stock/note-warp';
import { recordReadings } from '@/app/_server/stock/record-readings';
import { strikeReading } from '@/app/_server/stock/strike-reading';
import { readingSchema } from '@/app/(shop)/pieces/reading-schema';
import {
  changePieceSchema,
  giveSchema,
  nameWoodSchema,
  sawnSchema,
  strikeSchema,
  takeBoardsSchema,
  warpSchema,
} from '@/app/(shop)/pieces/schema';
import { sellerSchema } from '@/app/(shop)/pieces/seller-schema';

export async function readingAction(key: string, input: unknown) {
  return act(async () => readingSchema(await typingContext()), key, input, recordReadings);
}

export async function giveAction(key: string, input: unknown) {
  return act(giveSchema, key, input, givePiece);
}

export async function changePieceAction(key: string, input: unknown) {
  return act(async () => changePieceSchema(await typingContext()), key, input, changePiece);
}

export async function sellerAction(key: string, input: unknown) {
  return act(async () => sellerSchema(await typingContext()), key, input, noteSellerFigures);
}

export async function takeBoardsAction(key: string, input: unknown) {
  return act(takeBoardsSchema, key, input, takeBoards);
}

export async function strikeAction(key: string, input: unknown) {
  return act(strikeSchema, key, input, strikeReading);
}

export async function warpAction(key: string, input: unknown) {
  return act(async () => warpSchema(await typingContext()), key, input, noteWarp);
}

export async function sawnAction(key: string, input: unknown) {
  return act(sawnSchema, key, input, noteSawn);
}

export async function nameWoodAction(key: string, input: unknown) {
  return act(nameWoodSchema, key, input, nameWood);
}
