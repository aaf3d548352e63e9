import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import type { PieceFlag } from '@/shared/wood/piece';

/** One moisture reading: tenths of a per cent, as the meter showed it and what it is taken as, where it was corrected. */
type PieceReading = {
  readonly takenOn: CalendarDate;
  readonly mcTenths: number;
  readonly correctedTenths?: number | null;
};

export type PieceFacts = {
  readonly inStock: boolean;
  readonly hold: string;
  readonly flags: readonly PieceFlag[];
  readonly readings: readonly PieceReading[];
  /** Sheets are made dry: no reading is asked of them. */
  readonly form: string;
  /** The job it is promised to, if any. */
  readonly promisedTo?: { readonly id: number; readonly name: string };
};

export type PieceReason =
  | { readonly code: 'gone'; readonly weight: 'stop' }
  | { readonly code: 'held'; readonly weight: 'stop'; readonly hold: string }
  | { readonly code: 'promised-elsewhere'; readonly weight: 'stop'; readonly job: string }
  | { readonly code: 'wet'; readonly weight: 'care'; readonly mcTenths: number; readonly mostTenths: number }
  | { readonly code: 'no-reading'; readonly weight: 'care' }
  | { readonly code: 'reading-old'; readonly weight: 'care'; readonly days: number }
  | { readonly code: PieceFlag; readonly weight: 'care' };

export type PieceVerdict = { readonly word: 'use' | 'care' | 'stop'; readonly reasons: readonly PieceReason[] };

/** The wettest a piece may read before care is asked, tenths of a per cent. Common practice for indoor furniture. */
export const WETTEST_TENTHS = 100;
/** A reading older than this is asked for again, days. Common practice. */
const READING_KEEPS_DAYS = 30;
const WATCHED: readonly PieceFlag[] = ['broken', 'strapped', 'checked', 'twisted'];

/**
 * Whether a piece of wood may go to a job today, with every reason.
 *
 * Stop: it is gone, on hold, or promised to another job. Care: the wettest reading of the last day it was read is above
 * 10.0 % (common practice), there is no reading or it is more than 30 days old, or it is broken, strapped, checked or
 * twisted. The reading of the newest day counts, and of that day the wettest.
 * Example: a slab read at 11.4 % today → care, `wet`.
 */
export function judgePiece(piece: PieceFacts, today: CalendarDate, jobId?: number): PieceVerdict {
  const reasons: PieceReason[] = [];
  if (!piece.inStock) reasons.push({ code: 'gone', weight: 'stop' });
  if (piece.hold !== 'free') reasons.push({ code: 'held', weight: 'stop', hold: piece.hold });
  if (piece.promisedTo && piece.promisedTo.id !== jobId) {
    reasons.push({ code: 'promised-elsewhere', weight: 'stop', job: piece.promisedTo.name });
  }
  const newest = piece.readings
    .map((each) => each.takenOn)
    .sort()
    .at(-1);
  if (newest === undefined) {
    if (piece.form !== 'sheet') reasons.push({ code: 'no-reading', weight: 'care' });
  } else {
    const wettest = Math.max(
      ...piece.readings
        .filter((each) => each.takenOn === newest)
        .map(({ mcTenths, correctedTenths }) => correctedTenths ?? mcTenths),
    );
    if (wettest > WETTEST_TENTHS) {
      reasons.push({ code: 'wet', weight: 'care', mcTenths: wettest, mostTenths: WETTEST_TENTHS });
    }
    const days = daysBetween(newest, today);
    if (days > READING_KEEPS_DAYS) reasons.push({ code: 'reading-old', weight: 'care', days });
  }
  for (const flag of WATCHED) if (piece.flags.includes(flag)) reasons.push({ code: flag, weight: 'care' });
  const word = reasons.some((each) => each.weight === 'stop') ? 'stop' : reasons.length ? 'care' : 'use';
  return { word, reasons };
}
