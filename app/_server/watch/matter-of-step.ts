import { poursBefore } from '@/app/_server/pours/pours-before';
import type { OpenBook } from '@/prisma/open-book';

/** What of a step says which matter it is: its pour, and which lift of it. */
type StepOfMatter = { id: number; jobId: number; kind: string; pourId: number | null; lift: { nr: number } | null };

/**
 * The name of each step that stays the same as long as it is the same matter. A pour that is planned anew gets new steps
 * in the book, but its second lift is its second lift: the steps of a pour go by the first of the pours that took one
 * another's place, and by the number of the lift, `pour-7-lift-2`. Every other step goes by its own number, `step-12`.
 */
export async function matterOfSteps(
  book: OpenBook,
  steps: readonly StepOfMatter[],
): Promise<(step: StepOfMatter) => string> {
  const before = await poursBefore(book.read, [
    ...new Set(steps.flatMap(({ jobId, pourId }) => (pourId ? jobId : []))),
  ]);
  return ({ id, kind, pourId, lift }) => {
    if (pourId === null) return `step-${id}`;
    return `pour-${before(pourId).at(-1) ?? pourId}-${lift ? `lift-${lift.nr}` : kind}`;
  };
}
