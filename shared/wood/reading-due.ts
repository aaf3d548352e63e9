import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { WETTEST_TENTHS } from '@/shared/wood/judge-piece';

/** Wood promised to a job is read again after this many days. Common practice: weekly while it waits in the shop. */
const PROMISED_READING_DAYS = 7;
/** Wood that still dries is read again after this many days. Common practice: monthly. */
const DRYING_READING_DAYS = 30;

export type ReadWood = {
  readonly promised: boolean;
  readonly lastRead: CalendarDate | null;
  /** The wettest of that day, tenths of a per cent. */
  readonly mcTenths: number | null;
};

/**
 * The day a piece is next to be read with a meter, `'never-read'` where it never was, or undefined where nothing asks for
 * it: 7 days after its last reading while it is promised to a job, 30 while it reads above 10.0 % and dries. What is dry
 * and promised to nobody is read when it is wanted.
 * Example: promised, read on 18 Nov → 25 Nov.
 */
export function readingDue({ promised, lastRead, mcTenths }: ReadWood): CalendarDate | 'never-read' | undefined {
  if (lastRead === null) return 'never-read';
  if (promised) return addDays(lastRead, PROMISED_READING_DAYS);
  return mcTenths !== null && mcTenths > WETTEST_TENTHS ? addDays(lastRead, DRYING_READING_DAYS) : undefined;
}
