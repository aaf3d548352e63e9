import type { AllocationAsk, Take } from '@/shared/allocation/allocation-ask';
import { type Measures, measureAllocation } from '@/shared/allocation/measure-allocation';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

const COMPARED_MEASURES = ['short', 'splitSurfaces', 'lotChanges', 'waste', 'opened', 'order'] as const;
export type ComparedMeasure = (typeof COMPARED_MEASURES)[number];

export type MeasureDifference = {
  readonly measure: ComparedMeasure;
  /** For shortage: the first day on which it differs. */
  readonly on?: CalendarDate;
  readonly one: number;
  readonly other: number;
};

export type AllocationComparison = {
  /** Which is better by the first measure in which they differ. */
  readonly better: 'one' | 'other' | 'alike';
  /** Every measure in which they differ, in the order in which they count. */
  readonly differences: readonly MeasureDifference[];
};

/** Two allocations of one ask beside each other, measure by measure. */
export function compareAllocations(
  ask: AllocationAsk,
  one: readonly Take[],
  other: readonly Take[],
): AllocationComparison & { readonly one: Measures; readonly other: Measures } {
  const [a, b] = [measureAllocation(ask, one), measureAllocation(ask, other)];
  return { ...compareMeasures(a, b), one: a, other: b };
}

/**
 * Compares measures in the order in which they count: a shortage on an earlier day before one on a later day, then split
 * surfaces, changes of lot, waste, opened containers, order of expiry. Less is better.
 */
export function compareMeasures(one: Measures, other: Measures): AllocationComparison {
  const differences = COMPARED_MEASURES.flatMap((measure): MeasureDifference[] => {
    if (measure === 'short') return shortDifference(one, other);
    return one[measure] === other[measure] ? [] : [{ measure, one: one[measure], other: other[measure] }];
  });
  const [first] = differences;
  return { better: !first ? 'alike' : first.one < first.other ? 'one' : 'other', differences };
}

function shortDifference(one: Measures, other: Measures): MeasureDifference[] {
  const [a, b] = [one, other].map(({ short }) => new Map(short.map(({ on, amount }) => [on, amount])));
  const days = [...new Set([...(a?.keys() ?? []), ...(b?.keys() ?? [])])].sort();
  const on = days.find((day) => a?.get(day) !== b?.get(day));
  return on ? [{ measure: 'short', on, one: a?.get(on) ?? 0, other: b?.get(on) ?? 0 }] : [];
}
