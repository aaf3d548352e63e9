import type { HistoryEntry } from '@/app/_server/ledger/history';
import { sayChangedFields } from '@/app/(shop)/_parts/history/say-changed-fields';
import { type SayMovements, sayMovements } from '@/app/(shop)/_parts/history/say-movements';
import { sayWhen } from '@/app/(shop)/_parts/history/say-when';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { sayDate } from '@/shared/calendar/say-date';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
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
    what: readable(what, context),
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

const FEED_WORDS: Readonly<Record<string, string>> = {
  made: 'Made the address of the calendar',
  renewed: 'Renewed the address of the calendar: the old one answers no more',
  ended: 'Ended the calendar: its address answers no more',
};

const CUT_WORDS: Readonly<Record<string, string>> = {
  rip: 'ripping',
  resaw: 'resawing',
  break: 'breaking',
  unstrap: 'cutting of the bands',
};

/** That a cut was undone: what is whole again, and where it is. */
function sayUndoneCut({ movements }: HistoryEntry, { kind, label }: { kind: string; label: string }): string {
  const shown = printOwnLabel(label as OwnLabelCode);
  if (kind === 'take') return `Undid the taking of boards: they are in the pack ${shown} again`;
  const place = movements.find((line) => line.label === label)?.placeTo;
  return `Undid the ${CUT_WORDS[kind] ?? 'cut'}: ${shown} is in one piece again${place ? `, in ${place}` : ''}`;
}

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
    case 'reserved':
      return { what: `Promised ${entry.reference || said.things}${entry.job ? ` to ${entry.job.name}` : ''}`, why };
    case 'promises-released':
      return { what: `Freed ${entry.reference}${entry.job ? ` from ${entry.job.name}` : ''}`, why };
    case 'need-added':
      return { what: `Needs ${why}`, why: '' };
    case 'need-changed':
      return { what: `Changed a need: ${why}`, why: '' };
    case 'need-removed':
      return { what: `No longer needs ${why}`, why: '' };
    case 'arriving-added':
      return { what: `Ordered ${why}`, why: '' };
    case 'arriving-came':
      return { what: `Came as ordered: ${why}`, why: '' };
    case 'arriving-given-up':
      return { what: `Not coming: ${why}`, why: '' };
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
    case 'marks-confirmed':
      return { what: `Looked at on the new outline: ${why}`, why: '' };
    case 'straps-cut':
      return { what: 'Cut its bands: it holds', why };
    case 'pieces-paired':
      return { what: `Paired for a bookmatch: ${why}`, why: '' };
    case 'pair-parted':
      return { what: `Parted the pair: ${why}`, why: '' };
    case 'treated':
      return { what: tail(why, said.condition), why: '' };
    case 'sample-kept':
      return { what: `Kept a sample: ${why}`, why: '' };
    case 'sample-looked':
      return { what: `Looked at a sample. ${why}`, why: '' };
    case 'sample-gone':
      return { what: `A sample is gone. ${why}`, why: '' };
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
    case 'job-stage-set':
      return { what: `Moved the job on: ${why}`, why: '' };
    case 'part-added':
      return { what: `Added a part: ${why}`, why: '' };
    case 'part-changed':
      return { what: 'Changed a part', why: sayChangedFields(why) };
    case 'part-removed':
      return { what: `Took a part off: ${why}`, why: '' };
    case 'sheet-kept':
      return { what: `Wrote down the data sheet of ${why}`, why: '' };
    case 'pour-planned':
      return { what: `Planned the pour ${why}`, why: '' };
    case 'pour-changed':
      return { what: `Planned the pour anew: ${why}`, why: '' };
    case 'pour-removed':
      return { what: `Took the pour off: ${why}`, why: '' };
    case 'weighed-out':
      return { what: tail(`Weighed out for ${why}`, said.opened), why: '' };
    case 'lift-poured':
      return { what: `Poured ${why}`, why: '' };
    case 'step-added':
      return { what: `Planned ${why}`, why: '' };
    case 'steps-moved':
      return { what: `Moved on the time line: ${why}`, why: '' };
    case 'step-changed':
      return { what: `Put a step in other words: ${why}`, why: '' };
    case 'step-part-set':
      return { what: `Said which part it is for: ${why}`, why: '' };
    case 'step-removed':
      return { what: `Took a step off the time line: ${why}`, why: '' };
    case 'step-done':
      return { what: `Done: ${why}`, why: '' };
    case 'step-undone':
      return { what: `Not done after all: ${why}`, why: '' };
    case 'coats-planned':
      return { what: `Planned coats: ${why}`, why: '' };
    case 'finish-sheet-noted':
      return { what: `Kept what the finish’s sheet says: ${why}`, why: '' };
    case 'closed-weekdays-set':
      return { what: `Set the closed days of the week: ${why}`, why: '' };
    case 'closed-days-added':
      return { what: `Closed the workshop: ${why}`, why: '' };
    case 'closed-days-removed':
      return { what: `Opened the workshop again: ${why}`, why: '' };
    case 'settings-changed':
      return { what: 'Changed the settings', why: sayChangedFields(why) };
    case 'book-begun':
      return { what: 'Began the book', why };
    case 'stocktake-begun':
      return { what: `Began a stocktake of ${why}`, why: '' };
    case 'stocktake-posted':
      return { what: `Took stock of ${entry.place ?? 'a place'}: ${entry.reference}`, why };
    case 'stocktake-given-up':
      return { what: `Gave up the stocktake of ${why}`, why: '' };
    case 'trace-held':
      return { what: `Put all that is left of ${entry.reference || 'it'} on hold: ${why}`, why: '' };
    case 'trace-released':
      return { what: `Released what was held for ${entry.reference || 'it'}: ${why}`, why: '' };
    case 'fault-found':
      return { what: `Found wrong: ${why}`, why: '' };
    case 'fault-settled':
      return { what: `Settled ${why}`, why: '' };
    case 'rags-laid-out':
      return { what: 'Laid the oily rags out', why };
    case 'feed-changed':
    // Books of before have a kind for each.
    case 'feed-made':
    case 'feed-renewed':
    case 'feed-ended':
      return { what: FEED_WORDS[entry.reference || entry.kind.replace('feed-', '')] ?? '', why: '' };
    case 'reversed':
      return {
        what: entry.undidCut
          ? sayUndoneCut(entry, entry.undidCut)
          : tail(`Reversed entry ${entry.reverses}`, said.back),
        why,
      };
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
