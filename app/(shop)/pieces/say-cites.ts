import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { CitesNote } from '@/shared/wood/cites-note';

/** A listing of the Convention in a sentence, with its date and who to ask. */
export function sayCites({ listings, asOf, defer }: CitesNote, order: DateOrder): string {
  const named = listings.map(
    ({ taxon, appendix, limit }) => `${taxon} in Appendix ${appendix}${limit ? ` (${limit})` : ''}`,
  );
  return `Listed by CITES: ${named.join('; ')}. As of ${sayDate(asOf as CalendarDate, { order })}, written down from memory. ${defer}`;
}
