import type { z } from 'zod';
import { statusOfTrouble } from '@/app/_server/http/answer-json';
import type { Refusal } from '@/app/_server/refusal';
import { problemOfError } from '@/app/_server/words/problem-of-error';
import { sayRefusal } from '@/app/_server/words/say-refusal';

/** The plain-text answer when the book holds no label of that code: what happened, what was kept and what to do. */
export function refusedLabels(refusal: Refusal): Response {
  const { what, todo } = sayRefusal(refusal);
  return noLabels(404, what, todo);
}

/** The answer to a question that does not fit its form. */
export function badLabelQuestion(error: z.ZodError): Response {
  const sentences = [...new Set(error.issues.map((issue) => issue.message))].join(' ');
  return noLabels(400, sentences, 'Go back, choose the labels again and open them from there.');
}

/** Runs what answers with labels; what nobody expected and trouble of the store are said in words too. */
export async function answerLabels(answer: () => Promise<Response>): Promise<Response> {
  try {
    return await answer();
  } catch (error) {
    const problem = problemOfError(error);
    return noLabels(statusOfTrouble(problem) ?? 500, problem.what, problem.todo);
  }
}

function noLabels(status: 400 | 404 | 500 | 503, happened: string, toDo: string): Response {
  return new Response(`${happened}\nNothing was printed and the book is unchanged.\n${toDo}\n`, {
    status,
    headers: { 'Content-Type': 'text/plain; charset=utf-8', 'Cache-Control': 'no-store' },
  });
}
