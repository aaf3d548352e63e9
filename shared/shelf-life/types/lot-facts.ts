import type { LabelDate } from '@/shared/shelf-life/types/label-date';

export const HOLD_STATES = ['free', 'on-hold', 'quarantine', 'recalled'] as const;
export type HoldState = (typeof HOLD_STATES)[number];

/** What is known of a maker's lot: the dates are the maker's own, the same for every container of it. */
export type LotFacts = {
  readonly id: string;
  readonly code: string;
  readonly madeOn?: LabelDate;
  readonly bestBefore?: LabelDate;
  readonly useBy?: LabelDate;
  readonly hold: HoldState;
};
