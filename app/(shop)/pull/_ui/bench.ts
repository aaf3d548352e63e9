import type { PullDraft } from '@/app/(shop)/pull/_ui/pull-draft';
import type { PullGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What every part of the bench works with. */
export type Bench = {
  readonly goal: PullGoal;
  /** The day of use of this pull. */
  readonly day: CalendarDate;
  readonly today: CalendarDate;
  readonly units: UnitSystem;
  readonly dateOrder: DateOrder;
  readonly draft: PullDraft;
  /** Changes the draft and keeps it on the device. */
  readonly patch: (change: Partial<PullDraft>) => void;
  /** Changes the draft and asks the book again. */
  readonly ask: (change: Partial<PullDraft>) => void;
  /** Asks about another container, with the same day, amount and other part. */
  readonly turnTo: (label: string, amountText?: string) => void;
  /** Lets this pull go and scans the next thing. */
  readonly scanNext: () => void;
  readonly changeDay: () => void;
  readonly changeGoal: () => void;
};
