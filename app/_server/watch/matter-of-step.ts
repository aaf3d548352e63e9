import type { OpenBook } from '@/prisma/open-book';

/** What of a step says which matter it is: its pour, and which lift of it. */
type StepOfMatter = { id: number; kind: string; pourId: number | null; lift: { nr: number } | null };

/**
 * The name of each step that stays the same as long as it is the same matter. A pour that is planned anew gets new steps
 * in the book, but its second lift is its second lift: the steps of a pour go by the first of the pours that took one
 * another's place, and by the number of the lift, `pour-7-lift-2`. Every other step goes by its own number, `step-12`.
 */
export async function matterOfSteps(
  book: OpenBook,
  steps: readonly StepOfMatter[],
): Promise<(step: StepOfMatter) => string> {
  const first = await firstPours(book, [...new Set(steps.flatMap(({ pourId }) => pourId ?? []))]);
  return ({ id, kind, pourId, lift }) => {
    if (pourId === null) return `step-${id}`;
    return `pour-${first.get(pourId) ?? pourId}-${lift ? `lift-${lift.nr}` : kind}`;
  };
}

/** The pour each of these was planned as at first, by its number. An entry that plans a pour anew takes one off. */
async function firstPours(book: OpenBook, pourIds: readonly number[]): Promise<ReadonlyMap<number, number>> {
  if (pourIds.length === 0) return new Map();
  const jobs = await book.read.pour.findMany({ where: { id: { in: [...pourIds] } }, select: { jobId: true } });
  const pours = await book.read.pour.findMany({
    where: { jobId: { in: [...new Set(jobs.map(({ jobId }) => jobId))] } },
    select: { id: true, entryId: true, removedById: true },
  });
  const entryOf = new Map(pours.map(({ id, entryId }) => [id, entryId]));
  const replacedBy = new Map(pours.flatMap(({ id, removedById }) => (removedById === null ? [] : [[removedById, id]])));
  const firstOf = (id: number): number => {
    const before = replacedBy.get(entryOf.get(id) ?? 0);
    return before === undefined || before >= id ? id : firstOf(before);
  };
  return new Map(pourIds.map((id) => [id, firstOf(id)]));
}
