import { type Allocation, allocate } from '@/shared/allocation/allocate';
import type { AllocationAsk, Take } from '@/shared/allocation/allocation-ask';
import type { AskError } from '@/shared/allocation/check-ask';
import { type AllocationComparison, compareAllocations } from '@/shared/allocation/compare-allocations';
import { hangingTogether } from '@/shared/allocation/hanging-together';
import type { SolveProgram } from '@/shared/allocation/program';
import { reasonsForTake, type TakeReason } from '@/shared/allocation/reasons-for-take';
import { err, ok, type Result } from '@/shared/result/result';

export type ChoiceExplained = {
  readonly reasons: readonly TakeReason[];
  /** The best there is when this container may not go to this need. */
  readonly without: {
    /** What the need takes then. */
    readonly takes: readonly Take[];
    /** What that costs: `one` is the allocation as it is, `other` the one without. */
    readonly comparison: AllocationComparison;
    /** Other needs whose containers change with it. */
    readonly movedNeedIds: readonly string[];
    readonly status: Allocation['status'];
  };
};

/**
 * Why a container is allotted to a need, and what would change it: everything is worked out anew with that one pairing
 * barred, and the two are compared measure by measure. Only what hangs together with the need is solved again. Fails with
 * `not-taken` where the allocation has no such take.
 */
export async function explainChoice(
  ask: AllocationAsk,
  takes: readonly Take[],
  { needId, containerId }: { readonly needId: string; readonly containerId: string },
  solve: SolveProgram,
  options: { readonly timeLimitSeconds: number },
): Promise<Result<ChoiceExplained, AskError | { readonly code: 'not-taken' }>> {
  const take = takes.find((one) => one.needId === needId && one.containerId === containerId);
  if (!take) return err({ code: 'not-taken' });
  const part = hangingTogether(ask, needId);
  const ids = new Set(part.needs.map(({ id }) => id));
  const barred = { ...part, barred: [...(ask.barred ?? []), { needId, containerId }] };
  const found = await allocate(barred, solve, options);
  if (!found.ok) return found;
  const now = takes.filter((one) => ids.has(one.needId));
  const then = found.value.takes;
  const { better, differences } = compareAllocations(part, now, then);
  return ok({
    reasons: reasonsForTake(ask, takes, take),
    without: {
      takes: then.filter((one) => one.needId === needId),
      comparison: { better, differences },
      movedNeedIds: [...ids].filter((id) => id !== needId && said(now, id) !== said(then, id)),
      status: found.value.status,
    },
  });
}

function said(takes: readonly Take[], needId: string): string {
  const of = takes.filter((one) => one.needId === needId).map(({ containerId, amount }) => [containerId, amount]);
  return JSON.stringify(of.sort());
}
