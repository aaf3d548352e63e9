import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** A container on hand or an order to come, in whole small units. */
export type Supply = {
  readonly id: string;
  /** What a reason calls it: a label, or who sends it. */
  readonly words: string;
  readonly kind: 'on-hand' | 'arriving';
  /** The first day it is here; today or earlier for what is on hand. */
  readonly from: CalendarDate;
  /** Itself good; none where it keeps. */
  readonly lastGoodDay?: CalendarDate | undefined;
  readonly amount: number;
  /** What of it is promised to jobs, at most `amount`. */
  readonly promised: number;
};

/** What is needed on a day and not promised yet. */
export type Demand = {
  readonly id: string;
  readonly words: string;
  /** It must be here by this day. */
  readonly on: CalendarDate;
  /** And good to this one, `on` or later: the last lift of its pour, the last coat of its finish; `on` where none is given. */
  readonly goodTo?: CalendarDate | undefined;
  readonly amount: number;
};
