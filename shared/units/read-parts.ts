import { err, ok, type Result } from '@/shared/result/result';
import { LONGEST_TEXT } from '@/shared/units/limits';
import { plainCharacters } from '@/shared/units/plain-characters';
import { type Ratio, ratio } from '@/shared/units/ratio';
import { readDecimal } from '@/shared/units/read-decimal';

/** A number as it was written: a decimal (with its other reading when a comma could group thousands) or a fraction. */
type WrittenNumber =
  | { readonly kind: 'decimal'; readonly value: Ratio; readonly ifGrouped?: Ratio }
  | { readonly kind: 'fraction'; readonly whole: bigint; readonly over: bigint; readonly under: bigint };

/** One number with the unit after it. `unit` is lower case without dots and spaces, and empty when none is written. */
export type Part = {
  readonly number: WrittenNumber;
  readonly at: number;
  readonly unit: string;
  readonly unitAt: number;
  /** Where a hyphen joins this part to the one before, as in `5'-6"`. */
  readonly hyphenAt?: number;
};

export type ReadError =
  | { readonly code: 'empty' }
  | { readonly code: 'not-a-number'; readonly at: number }
  | { readonly code: 'negative'; readonly at: number };

const VULGAR: Readonly<Record<string, readonly [bigint, bigint]>> = {
  '½': [1n, 2n],
  '⅓': [1n, 3n],
  '⅔': [2n, 3n],
  '¼': [1n, 4n],
  '¾': [3n, 4n],
  '⅕': [1n, 5n],
  '⅖': [2n, 5n],
  '⅗': [3n, 5n],
  '⅘': [4n, 5n],
  '⅙': [1n, 6n],
  '⅚': [5n, 6n],
  '⅛': [1n, 8n],
  '⅜': [3n, 8n],
  '⅝': [5n, 8n],
  '⅞': [7n, 8n],
  '⅒': [1n, 10n],
};
const FRACTION = /(?:(\d+)(?:-|\s+))?(\d+)\s*\/\s*(\d+)/y;
const VULGAR_FRACTION = /(?:(\d+)(?:-|\s*))?([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅒])/y;
const DECIMAL = /(?:\d+|(?=[.,]\d))(?:[.,\u00a0]\d+)*/y;
const UNIT = /(?:fl(?:uid)?\.?\s*)?[a-z]+\.?|''|"|'/iy;
const SPACE = /\s*/y;

function match(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

function readNumber(text: string, at: number): { readonly number: WrittenNumber; readonly end: number } | undefined {
  const fraction = match(FRACTION, text, at);
  if (fraction) {
    const [all, whole = '0', over = '', under = ''] = fraction;
    const number = { kind: 'fraction', whole: BigInt(whole), over: BigInt(over), under: BigInt(under) } as const;
    return number.under === 0n ? undefined : { number, end: at + all.length };
  }
  const vulgar = match(VULGAR_FRACTION, text, at);
  if (vulgar) {
    const [all, whole = '0', sign = ''] = vulgar;
    const [over, under] = VULGAR[sign] ?? [0n, 1n];
    return { number: { kind: 'fraction', whole: BigInt(whole), over, under }, end: at + all.length };
  }
  const literal = match(DECIMAL, text, at)?.[0];
  const read = literal ? readDecimal(literal) : undefined;
  if (!literal || !read) return undefined;
  const digits = BigInt(read.whole + read.fraction);
  const value = ratio(digits, 10n ** BigInt(read.fraction.length));
  const doubtful = read.couldGroup && read.mark === ',';
  return {
    number: { kind: 'decimal', value, ...(doubtful ? { ifGrouped: ratio(digits) } : {}) },
    end: at + literal.length,
  };
}

/**
 * Splits what was typed into numbers with their units, left to right: `5' 6 1/2"`, `1 lb 4 oz`, `2,5 kg`, `½`. Knows
 * nothing of what the units mean. A plain space never groups thousands, because `3 500 g` may be three of 500 g. Errors
 * carry the position of the first character that could not be read: `empty`, `negative` (a leading minus),
 * `not-a-number` (also for text past 60 characters). Never throws.
 */
export function readParts(typed: string): Result<readonly Part[], ReadError> {
  const text = plainCharacters(typed).trimEnd();
  let at = match(SPACE, text, 0)?.[0].length ?? 0;
  if (at >= text.length) return err({ code: 'empty' });
  if (text.length > LONGEST_TEXT) return err({ code: 'not-a-number', at: LONGEST_TEXT });
  if (text[at] === '-' && /^-\s*[.,]?[\d½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅒]/.test(text.slice(at))) return err({ code: 'negative', at });
  const parts: Part[] = [];
  while (at < text.length) {
    let hyphenAt: number | undefined;
    if (parts.length && text[at] === '-') {
      hyphenAt = at;
      at += 1 + (match(SPACE, text, at + 1)?.[0].length ?? 0);
    }
    const read = readNumber(text, at);
    if (!read) return err({ code: 'not-a-number', at });
    const unitAt = read.end + (match(SPACE, text, read.end)?.[0].length ?? 0);
    const written = match(UNIT, text, unitAt)?.[0] ?? '';
    const unit = written.toLowerCase().replace(/[.\s]/g, '');
    parts.push({
      number: read.number,
      at,
      unit,
      unitAt: written ? unitAt : read.end,
      ...(hyphenAt === undefined ? {} : { hyphenAt }),
    });
    const end = written ? unitAt + written.length : read.end;
    at = end + (match(SPACE, text, end)?.[0].length ?? 0);
  }
  return ok(parts);
}
