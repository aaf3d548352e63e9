import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { FinishSheet } from '@/shared/finish/finish-sheet';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import type { ClosedDays } from '@/shared/timeline/closed-days';

/** What a resin's sheet says that has to do with days. */
type PourTiming = Pick<ResinSheet, 'againFromHours' | 'againToHours' | 'demouldHours' | 'fullCureDays'>;
/** What a finish's sheet says that has to do with days. */
type CoatTiming = Pick<FinishSheet, 'recoatFromHours' | 'recoatToHours' | 'cureDays' | 'sandBetween'>;

/** What the steps of a job are judged by. Pours by their number, finishes by the number of their product. */
export type TimelineFacts = {
  readonly today: CalendarDate;
  readonly dueOn: CalendarDate | null;
  readonly closed: ClosedDays;
  readonly pours: Readonly<Record<number, PourTiming>>;
  readonly finishes: Readonly<Record<number, CoatTiming>>;
  /** Where the hour counts: the hour it is, and at which the lifts of the day were poured. */
  readonly hours?: HoursOfDay;
};

/** Minutes since midnight in the workshop's time zone, 0 to 1439. */
export type HoursOfDay = {
  readonly now: number;
  /** By the step of a lift, where it was written down on its day; of any other the hour is not known. */
  readonly pouredAt: Readonly<Record<number, number>>;
};
