'use server';

import { act } from '@/app/_server/act';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { typingContext } from '@/app/_server/book/typing-context';
import { addPart } from '@/app/_server/jobs/add-part';
import { changePart } from '@/app/_server/jobs/change-part';
import { loadJob } from '@/app/_server/jobs/read-jobs';
import { removePart } from '@/app/_server/jobs/remove-part';
import { setStage } from '@/app/_server/jobs/set-stage';
import { addStep } from '@/app/_server/timeline/add-step';
import { changeStep } from '@/app/_server/timeline/change-step';
import { finishStep } from '@/app/_server/timeline/finish-step';
import { moveSteps } from '@/app/_server/timeline/move-steps';
import { readTimeline } from '@/app/_server/timeline/read-timeline';
import { rejudge } from '@/app/_server/timeline/rejudge';
import { removeStep } from '@/app/_server/timeline/remove-step';
import { reopenStep } from '@/app/_server/timeline/reopen-step';
import { setStepPart } from '@/app/_server/timeline/set-step-part';
import { problemOfError } from '@/app/_server/words/problem-of-error';
import { type StockRejudged, sayRejudged } from '@/app/(shop)/jobs/[id]/say-rejudged';
import {
  addPartSchema,
  addStepSchema,
  changePartSchema,
  changeStepSchema,
  finishStepSchema,
  moveStepsSchema,
  partIdSchema,
  rejudgeSchema,
  stageSchema,
  stepPartSchema,
  stepSchema,
} from '@/app/(shop)/jobs/[id]/schema';

export async function setStageAction(key: string, input: unknown) {
  return act(stageSchema, key, input, setStage);
}

export async function addStepAction(key: string, input: unknown) {
  return act(addStepSchema, key, input, addStep);
}

export async function moveStepsAction(key: string, input: unknown) {
  return act(moveStepsSchema, key, input, moveSteps);
}

export async function changeStepAction(key: string, input: unknown) {
  return act(changeStepSchema, key, input, changeStep);
}

export async function setStepPartAction(key: string, input: unknown) {
  return act(stepPartSchema, key, input, setStepPart);
}

export async function removeStepAction(key: string, input: unknown) {
  return act(stepSchema, key, input, removeStep);
}

export async function finishStepAction(key: string, input: unknown) {
  return act(finishStepSchema, key, input, finishStep);
}

export async function reopenStepAction(key: string, input: unknown) {
  return act(stepSchema, key, input, reopenStep);
}

export async function addPartAction(key: string, input: unknown) {
  return act(async () => addPartSchema(await typingContext()), key, input, addPart);
}

export async function changePartAction(key: string, input: unknown) {
  return act(async () => changePartSchema(await typingContext()), key, input, changePart);
}

export async function removePartAction(key: string, input: unknown) {
  return act(partIdSchema, key, input, removePart);
}

export type RejudgeAnswer = { ok: true; stock: StockRejudged[] } | { ok: false; says: string };

/** Judges the stock of a job again as if its steps stood on other days. Writes nothing. */
export async function rejudgeAction(input: unknown): Promise<RejudgeAnswer> {
  try {
    const { jobId, moves } = rejudgeSchema.parse(input);
    const { book, head } = await bookForPage();
    const job = await loadJob(book.read, jobId);
    if (!job) return { ok: false, says: 'This job is not in the book any more. Load the page again.' };
    const context = { today: head.today, order: head.dateOrder, prefer: head.units };
    return { ok: true, stock: sayRejudged(rejudge(await readTimeline(book, job, head.today), moves), context) };
  } catch (error) {
    const { what, todo } = problemOfError(error);
    return { ok: false, says: `${what} ${todo}` };
  }
}
