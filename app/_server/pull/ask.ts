import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Purpose } from '@/shared/shelf-life/types/verdict';

/** What somebody asks of a container: for which job or purpose, on which day, how much. */
export type Ask = {
  label: string;
  jobId?: number;
  /** Taken from the job where there is one. */
  purpose: Purpose;
  /** The day of last use. */
  dayOfUse: CalendarDate;
  /** In the product's small unit. */
  asked?: number;
  /** The other part it is mixed with, where no job says so. */
  pairedLabel?: string;
};
