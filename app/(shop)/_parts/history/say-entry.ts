import type { HistoryEntry } from '@/app/_server/ledger/history';
import { sayChangedFields } from '@/app/(shop)/_parts/history/say-changed-fields';
import { type SayMovements, sayMovements } from '@/app/(shop)/_parts/history/say-movements';
import { sayWhen } from '@/app/(shop)/_parts/history/say-when';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { sayDate } from '@/shared/calendar/say-date';
import type { VerdictWord } from '@/shared/shelf-life/types/verdict';

export type SayEntry = SayMovements & { timeZone: string };

/** One entry of the book in plain words, ready to be drawn. */
export type SaidEntry = {
  id: number;
  when: { iso: string; words: string };
  /** "Written 25 Nov, 17:30", where that is not when it happened. */
  writtenLater: string | null;
  who: string;
  what: string;
  why: string;
  /** What the override of a Stop rests on. */
  overridden: string | null;
  verdict: VerdictWord | null;
  reversed: string | null;
  canReverse: boolean;
  /** The things it moved. */
  labels: string[];
  /** How many more things it moved. */
  moreLabels: number;
  job: { id: number; name: string } | null;
  photos: string[];
};

const LATER_MS = 60_000;

/** Says an entry: what was done as one sentence, and beside it who, when, why and what became of it. */
export function sayEntry(entry: HistoryEntry, context: SayEntry): SaidEntry {
  const later = Date.parse(entry.writtenAt) - Date.parse(entry.happenedAt) > LATER_MS;
  const { what, why } = sayWhat(entry, context);
  const labels = [...new Set(entry.movements.flatMap((line) => line.label ?? []))];
  return {
    id: entry.id,
    when: { iso: entry.happenedAt, words: sayWhen(entry.happenedAt, context) },
    writtenLater: later ? `Written ${sayWhen(entry.writtenAt, context)}` : null,
    who: entry.device ? `${entry.who}, ${entry.device}` : entry.who,
    what,
    why: readable(why, context),
    overridden: entry.overridden
      ? `Used against the advice, on the test pour of ${sayDate(entry.overridden.madeOn as CalendarDate, context)}${entry.overridden.note ? `: ${entry.overridden.note}` : ''}`
      : null,
    verdict: entry.verdict,
    reversed: entry.reversedBy === null ? null : `Reversed by entry ${entry.reversedBy}.`,
    canReverse: entry.canReverse,
    labels,
    moreLabels: entry.moreMovements,
    job: entry.job,
    photos: entry.photos,
  };
}

/** Dates as the book keeps them, said as they are said everywhere else. */
const readable = (text: string, { today, order }: SayMovements) =>
  text.replaceAll(/\b\d{4}-\d{2}-\d{2}\b/g, (date) => sayDate(date as CalendarDate, { order, today }));

function sayWhat(entry: HistoryEntry, context: SayMovements): { what: string; why: string } {
  const { why } = entry;
  const said = sayMovements(entry.movements, context, entry.moreMovements);
  const forJob = entry.job ? ` for ${entry.job.name}` : '';
  const ref = entry.reference ? ` (${entry.reference})` : '';
  const tail = (first: string, ...rest: (string | undefined)[]) => [first, ...rest].filter(Boolean).join('. ');
  switch (entry.kind) {
    case 'received':
      return {
        what: tail(
          `Received ${said.amount || 'it'}${said.place ? `, into ${said.place}` : ''}${ref}`,
          said.opened,
          said.condition,
          said.hold,
        ),
        why: entry.movements.some((line) => line.stockKind === 'container') ? '' : why,
      };
    case 'pulled':
      return { what: tail(`Took ${said.amount}${forJob}`, said.opened), why };
    case 'weighed':
      return { what: `Weighed it: ${said.amount} ${said.gain ? 'more' : 'less'} than the book said`, why };
    case 'opened':
      return { what: said.opened ?? 'Opened', why };
    case 'moved':
      return {
        what: `Moved ${said.things}to ${said.place ?? 'no place'}${said.placeFrom ? `, from ${said.placeFrom}` : ''}`,
        why: '',
      };
    case 'condition-noted':
      return { what: said.condition ?? 'Condition noted', why };
    case 'held':
      return { what: `${said.hold ?? 'Held'}: ${why}`, why: '' };
    case 'released':
      return { what: `Released: ${why}`, why: '' };
    case 'discarded':
      return { what: `Threw away ${said.amount}`, why };
    case 'piece-promised':
      return { what: `Promised${forJob ? ` to ${entry.job?.name}` : ''}`, why };
    case 'piece-taken':
      return { what: `Taken${forJob}`, why };
    case 'piece-freed':
      return { what: `Freed${entry.job ? ` from ${entry.job.name}` : ''}`, why };
    case 'piece-changed':
      return { what: 'Put right what the book says of it', why };
    case 'piece-measured':
      return { what: `Measured ${why}`, why: '' };
    case 'seller-noted':
      return { what: `Kept what the seller said${why ? `: ${why}` : ''}`, why: '' };
    case 'piece-marked':
      return { what: `Marked on the drawing: ${why}`, why: '' };
    case 'boards-taken':
      return { what: `Took out of the pack: ${why}`, why: '' };
    case 'piece-cut':
      return { what: why, why: '' };
    case 'straps-cut':
      return { what: 'Cut its bands: it holds', why };
    case 'pieces-paired':
      return { what: `Paired for a bookmatch: ${why}`, why: '' };
    case 'pair-parted':
      return { what: `Parted the pair: ${why}`, why: '' };
    case 'inspected':
      return { what: why, why: '' };
    case 'reading-taken':
      return { what: `Moisture read: ${why}`, why: '' };
    case 'reading-struck':
      return { what: `Struck out the reading of ${why}`, why: '' };
    case 'warp-noted':
      return { what: `Measured off a straightedge: ${why}`, why: '' };
    case 'sawn-noted':
      return { what: `Noted how it was sawn: ${why}`, why: '' };
    case 'air-logged':
      return { what: `Wrote down the air: ${why}`, why: '' };
    case 'season-set':
      return { what: `Set the usual air: ${why}`, why: '' };
    case 'season-removed':
      return { what: `Took off the usual air: ${why}`, why: '' };
    case 'photo-added':
      return { what: 'Added a photo', why };
    case 'dates-corrected':
      return { what: 'Corrected the dates of the lot', why };
    case 'product-taught':
      return { what: `Taught the book ${entry.product ?? 'a product'}`, why };
    case 'product-changed':
      return { what: `Changed how ${entry.product ?? 'the product'} is kept in the book`, why: sayChangedFields(why) };
    case 'code-taught':
      return { what: 'Taught a code', why };
    case 'place-added':
      return { what: `Added the place ${why || entry.place}`, why: '' };
    case 'place-changed':
      return { what: 'Changed the place', why };
    case 'temperature-noted':
      return {
        what: `Noted how cold and warm it was: ${why}`,
        why: said.condition ? `${said.things.trim() || 'It'}: ${said.condition.toLowerCase()}` : '',
      };
    case 'job-added':
      return { what: `Took on ${entry.job?.name ?? why}`, why: '' };
    case 'job-changed':
      return { what: 'Changed the job', why: sayChangedFields(why) };
    case 'settings-changed':
      return { what: 'Changed the settings', why: sayChangedFields(why) };
    case 'book-begun':
      return { what: 'Began the book', why };
    case 'reversed':
      return { what: tail(`Reversed entry ${entry.reverses}`, said.back), why };
    default:
      return {
        what: tail(
          entry.kind.replaceAll('-', ' ').replace(/^./, (first) => first.toUpperCase()),
          said.back,
        ),
        why,
      };
  }
}
