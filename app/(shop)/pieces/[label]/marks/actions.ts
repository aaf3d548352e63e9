'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { changeMarks } from '@/app/_server/shapes/change-marks';
import { confirmMarks } from '@/app/_server/shapes/confirm-marks';
import { outlineByLabel } from '@/app/_server/shapes/outline-by-label';
import { confirmMarksSchema, marksSchema } from '@/app/(shop)/pieces/[label]/marks/schema';

export async function marksAction(key: string, input: unknown) {
  return act(async () => marksSchema(await typingContext(), await outlineByLabel(input)), key, input, changeMarks);
}

export async function confirmMarksAction(key: string, input: unknown) {
  return act(confirmMarksSchema, key, input, confirmMarks);
}
