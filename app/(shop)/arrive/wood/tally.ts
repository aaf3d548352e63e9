import { parseLength } from '@/shared/units/parse-length';
import { sayLengthError } from '@/shared/units/say-length-error';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { TalliedBoard } from '@/shared/wood/tally-boards';

/** One board as it was typed. */
export type TallyLine = { readonly width: string; readonly length: string };

/** Boards of random sizes as they are tallied: the lines that are written, and the one that is being typed. */
export type TypedTally = {
  /** Kept together under one label, or each as a board of its own. */
  readonly as: 'pack' | 'singly';
  readonly lines: readonly TallyLine[];
  readonly width: string;
  readonly length: string;
  readonly sellerName: string;
  readonly sellerBoardFeet: string;
};

export const NO_TALLY: TypedTally = {
  as: 'pack',
  lines: [],
  width: '',
  length: '',
  sellerName: '',
  sellerBoardFeet: '',
};

export type ReadLine =
  | { readonly ok: true; readonly board: TalliedBoard }
  | { readonly ok: false; readonly field: 'width' | 'length'; readonly says: string };

/** A number alone, with its fraction or not: no unit is written after it. */
const BARE = /^[\d\s.,/¼½¾-]+$/;

/**
 * Reads one board. Where inches are preferred its length alone is in feet, as boards are tallied: `8` is eight feet and
 * `96"` is inches. A board that is wider than long had its measures turned round.
 */
export function readTallyLine({ width, length }: TallyLine, prefer: UnitSystem): ReadLine {
  const across = parseLength(width, { prefer });
  if (!across.ok) return { ok: false, field: 'width', says: sayLengthError(across.error, { prefer }) };
  if (across.value <= 0) return { ok: false, field: 'width', says: 'Give the width.' };
  const inFeet = prefer === 'imperial' && BARE.test(length.trim());
  const along = parseLength(inFeet ? `${length.trim()} ft` : length, { prefer });
  if (!along.ok) return { ok: false, field: 'length', says: sayLengthError(along.error, { prefer }) };
  if (along.value <= across.value) {
    return { ok: false, field: 'length', says: 'It is wider than long. The width comes first, then the length.' };
  }
  return { ok: true, board: { width: across.value, length: along.value } };
}

const BETWEEN = /\s*(?:[x×*;\t]|\bby\b)\s*/i;
/** As many of one size as one line may stand for. */
const MOST_OF_ONE = 99;

/**
 * Lines of a written tally: width, then length, a sign between them, and how many where there are several: `6 1/2 x 8`,
 * `150 × 2400 × 3`, `5;10`. A line that has no length is kept as it is, to be put right.
 */
export function splitTally(text: string): TallyLine[] {
  return text.split(/\r?\n/).flatMap((line) => {
    if (line.trim() === '') return [];
    const [width = '', length = '', count = ''] = partsOf(line.trim());
    const many = /^\d{1,2}$/.test(count) ? Math.min(Number(count), MOST_OF_ONE) : 1;
    return Array.from({ length: many }, () => ({ width, length }));
  });
}

function partsOf(line: string): string[] {
  const parts = line.split(BETWEEN);
  if (parts.length > 1) return parts;
  // Two plain numbers need no sign between them; with fractions a space means something else.
  const numbers = line.split(/\s+/);
  return numbers.length === 2 && numbers.every((number) => /^\d+([.]\d+)?$/.test(number)) ? numbers : parts;
}
