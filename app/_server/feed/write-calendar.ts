import ical, { ICalEventTransparency } from 'ical-generator';
import type { FeedEvent } from '@/app/_server/feed/feed-event';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** Calendar programs are asked to come again after so long, seconds (RFC 7986, 5.7). */
const REFRESH_SECONDS = 60 * 60;

export type CalendarOf = {
  /** The workshop's name. */
  name: string;
  /** What makes its events' identifiers its own: the same for the life of the book. */
  bookId: string;
  /** Where its pages are, `http://192.168.1.20:3000`. */
  origin: string;
  /** When each entry was written. */
  writtenAt: ReadonlyMap<number, Date>;
};

/**
 * The events as an iCalendar object (RFC 5545), with its lines folded and ended as that asks. Every event is a whole day,
 * its end the day after (3.6.1: DTEND is not included), and free time. DTSTAMP and LAST-MODIFIED are when the newest entry
 * about it was written (3.8.7.2: without a METHOD both say when it was last revised), SEQUENCE is that entry's number.
 */
export function writeCalendar(events: readonly FeedEvent[], { name, bookId, origin, writtenAt }: CalendarOf): string {
  const calendar = ical({
    prodId: { company: 'Flitchbook', product: 'Flitchbook', language: 'EN' },
    // The library writes the name as it is given.
    name: escapeText(plain(name)),
    ttl: REFRESH_SECONDS,
  });
  for (const event of events) {
    const stamp = writtenAt.get(event.entryId) ?? new Date(0);
    calendar.createEvent({
      id: `${event.id}@${bookId}.flitchbook.invalid`,
      sequence: event.entryId,
      stamp,
      lastModified: stamp,
      allDay: true,
      start: midnight(event.day),
      end: midnight(addDays(event.day, 1)),
      summary: plain(event.summary),
      description: plain(event.description),
      url: `${origin}${event.path}`,
      transparency: ICalEventTransparency.TRANSPARENT,
    });
  }
  return `${calendar.toString()}\r\n`;
}

const midnight = (day: CalendarDate) => new Date(`${day}T00:00:00Z`);

/** Without what no TEXT may hold (RFC 5545, 3.3.11: controls other than the tab) and what is no character at all. */
function plain(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: those are what is taken out
  return text.replaceAll(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]|\p{Surrogate}/gu, '');
}

/** TEXT as RFC 5545, 3.3.11 asks: backslash, semicolon, comma, and a new line. */
function escapeText(text: string): string {
  return text.replaceAll(/[\\;,]/g, (character) => `\\${character}`).replaceAll(/\r\n|\r|\n/g, '\\n');
}
