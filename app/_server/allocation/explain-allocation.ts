import { readAllocation } from '@/app/_server/allocation/read-allocation';
import { solveWithin } from '@/app/_server/allocation/solve-program';
import type { OpenBook } from '@/prisma/open-book';
import { explainChoice } from '@/shared/allocation/explain-choice';
import { findConflicts } from '@/shared/allocation/find-conflicts';
import { sayConflict } from '@/shared/allocation/say-conflict';
import type { SayAllocation } from '@/shared/allocation/say-context';
import { sayDifference } from '@/shared/allocation/say-difference';
import { sayTake } from '@/shared/allocation/say-take';
import { sayTakeReason } from '@/shared/allocation/say-take-reason';

/** Seconds for one explanation: the allocation itself, and what is worked out beside it. */
const SECONDS = 2;

type Head = { today: SayAllocation['today']; currency: string };

/** Why a tin is for a need, and what would be otherwise without it, in sentences. */
export type ChoiceWords = { why: readonly string[]; instead: readonly string[] };

/** Undefined where the book changed and the tin is no longer for that need. */
export async function explainTin(
  book: OpenBook,
  head: Head,
  choice: { needId: string; containerId: string },
  how: SayAllocation,
): Promise<ChoiceWords | undefined> {
  const { ask, allocation } = await readAllocation(book, head);
  const explained = await explainChoice(ask, allocation.takes, choice, solveWithin(SECONDS), {
    timeLimitSeconds: SECONDS,
  });
  if (!explained.ok) return undefined;
  const { reasons, without } = explained.value;
  const { differences } = without.comparison;
  return {
    why: reasons.map((reason) => sayTakeReason(ask, reason, how)),
    instead: [
      ...(without.takes.length > 0
        ? without.takes.map((take) => sayTake(ask, take, how))
        : ['Without it this could not be had.']),
      ...(differences.length > 0
        ? differences.map((each) => sayDifference(each, how))
        : ['It comes to the same: take that one if it is nearer to hand.']),
      ...(without.status === 'proved' ? [] : ['Time ran out before this was proved.']),
    ],
  };
}

/** The fewest things that cannot all be had, and the limits that make it so, in sentences; one list for each conflict. */
export async function explainShortage(book: OpenBook, head: Head, how: SayAllocation): Promise<string[][]> {
  const { ask, allocation } = await readAllocation(book, head);
  const short = allocation.short.map(({ needId }) => needId);
  const conflicts = await findConflicts(ask, short, solveWithin(SECONDS), { timeLimitSeconds: SECONDS });
  return conflicts.map((conflict) => [...sayConflict(ask, conflict, how)]);
}
