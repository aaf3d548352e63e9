import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { begunOwnLabel } from '@/shared/scan-codes/begun-own-label';
import { readScan } from '@/shared/scan-codes/read-scan';

/** What a search may mean, each part looked up where it belongs. */
type Query = {
  /** To be split into words. */
  words: string;
  /** A label of ours, whole or begun. */
  label?: string;
  /** How a taught code may begin, as the book keeps codes. */
  codes: string[];
};

/** A taught code is searched for once this much of it is typed: two digits of a GTIN say nothing. */
const LEAST_OF_A_CODE = 4;
const LONGEST_GTIN = 14;
/** What a GTIN-14, -13, -12 and -8 is kept with in front: people type what is printed under the bars. */
const ZEROS_IN_FRONT = ['', '0', '00', '000000'];
/** A reading dates what the label says by the day it is read on; a search looks for none of it. */
const SOME_DAY = '2026-01-01' as CalendarDate;

/**
 * Reads a search as it is typed, or as it was scanned into the box: the number under a bar code, begun or whole, however
 * it is spaced; a whole GS1 label, found by its product and its lot; a label of ours with its look-alikes.
 */
export function readQuery(text: string): Query {
  const reading = readScan({ text }, { today: SOME_DAY });
  if (reading.kind === 'gs1') return { words: reading.lot ?? '', codes: reading.canonical ? [reading.canonical] : [] };
  const digits = text.replaceAll(/[\s-]/g, '');
  const isNumber = /^\d+$/.test(digits) && digits.length <= LONGEST_GTIN;
  const typed = [text.trim(), ...(reading.kind === 'unknown' ? [reading.code] : []), ...(isNumber ? [digits] : [])];
  const codes = typed.filter((code) => code.length >= LEAST_OF_A_CODE);
  if (isNumber && codes.length) codes.push(...ZEROS_IN_FRONT.map((zeros) => zeros + digits));
  return { words: text, label: begunOwnLabel(text), codes: [...new Set(codes)] };
}
