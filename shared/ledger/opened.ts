import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** When a container was opened, and whether somebody knows or guesses. */
export type Opened = { on: CalendarDate; sureness: 'known' | 'guessed' };

/** As the ledger keeps it: `2026-06-12/known`. */
export function writeOpened(opened: Opened): string {
  return `${opened.on}/${opened.sureness}`;
}

/** Reads what `writeOpened` wrote; null stays null (still sealed). */
export function readOpened(text: string | null): Opened | null {
  if (text === null) return null;
  const [on, sureness] = text.split('/');
  return { on: on as CalendarDate, sureness: sureness === 'known' ? 'known' : 'guessed' };
}
