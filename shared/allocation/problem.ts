import type { AllocationContainer, AllocationNeed } from '@/shared/allocation/allocation-ask';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** One need within a problem. `surface` and `batch` are places in the problem's lists. */
export type ProblemNeed = {
  readonly need: AllocationNeed;
  readonly day: CalendarDate;
  readonly surface: number;
  readonly batch: number | undefined;
  /** Places of the slots it may draw from. */
  readonly slots: readonly number[];
};

/** Containers that no rule and no measure can tell apart, but for their labels. */
export type Group = {
  readonly containers: readonly AllocationContainer[];
  readonly sealed: boolean;
  /** What is free in each. */
  readonly each: number;
  /** What a small unit left over weighs as waste, in `weightStep`, and whether it is waste while the container stays shut. */
  readonly weight: number;
  readonly wastedShut: boolean;
  readonly rank: number;
  readonly lot: string;
  readonly product: string;
  readonly slots: readonly number[];
};

/**
 * Containers of a group that are opened on one day and so end on one day, or, of a group that is open already, the
 * containers themselves.
 */
export type Slot = {
  readonly group: number;
  readonly needs: readonly number[];
  /** Whether what is left over in it is waste. */
  readonly wasted: boolean;
  /** Which system and set it belongs to, for needs that must agree on one. */
  readonly systemOfIt: string;
  readonly setOfIt: string;
};

/** Part of an ask that nothing else in the ask touches: it can be solved by itself. */
export type Problem = {
  readonly needs: readonly ProblemNeed[];
  readonly groups: readonly Group[];
  readonly slots: readonly Slot[];
  /** For each batch what it might be of: keys of systems or of sets. */
  readonly batches: readonly { readonly setDemanded: boolean; readonly choices: readonly string[] }[];
  /** For each surface the lots it might be of, and which of them it is of already. */
  readonly surfaces: readonly { readonly lots: readonly string[]; readonly used: readonly string[] }[];
  /** Every amount in the problem is a multiple of this. */
  readonly step: number;
  /**
   * What amounts are counted in within a programme: the step times a power of two, so that none is much above a thousand.
   * A solver's tolerances are absolute, and a double has sixteen digits: amounts of seven would leave it too few.
   */
  readonly unit: number;
  /** What the weights of its groups are counted in. */
  readonly weightStep: number;
};

/** Which choice of its batch a slot is for. */
export function choiceOf(slot: Slot, { setDemanded }: { readonly setDemanded: boolean }): string {
  return setDemanded ? slot.setOfIt : slot.systemOfIt;
}
