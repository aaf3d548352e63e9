'use server';

import { act } from '@/app/_server/act';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { recordTestPour } from '@/app/_server/pull/record-test-pour';
import { givePiece } from '@/app/_server/stock/give-piece';
import { pieceSchema, pullSchema, testPourSchema } from '@/app/(shop)/pull/schema';

export async function pullAction(key: string, input: unknown) {
  return act(pullSchema, key, input, pullContainer);
}

export async function testPourAction(key: string, input: unknown) {
  return act(testPourSchema, key, input, recordTestPour);
}

export async function pieceAction(key: string, input: unknown) {
  return act(pieceSchema, key, input, givePiece);
}
