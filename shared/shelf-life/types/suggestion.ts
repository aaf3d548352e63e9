import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** One container to take from, and how much. */
export type Take = {
  readonly containerId: string;
  readonly lotId: string;
  readonly label: string;
  /** Exact count of the stock's small unit, at least 1 and never more than is left. */
  readonly take: number;
  readonly lastGoodDay?: CalendarDate;
  readonly word: 'use' | 'care';
};

/** Why this set: the first that holds. */
export type SuggestionWhy = 'none-good' | 'not-enough' | 'lots-mixed' | 'one-lot' | 'first-to-expire';

export type Suggestion = {
  /** In the order in which to take them. */
  readonly containers: readonly Take[];
  /** How much still comes from the container in hand; 0 when it may not be used. */
  readonly withThis: number;
  /** True when the takes, together with `withThis`, are exactly what was asked; with nothing asked, when there is one. */
  readonly reaches: boolean;
  readonly why: SuggestionWhy;
};
