import { monthNamed } from '@/shared/calendar/month-names';

/** A piece of a typed date: a month by name, or a run of digits with its length kept, since `05` and `2005` differ. */
export type DateToken =
  | { readonly kind: 'month'; readonly month: number }
  | { readonly kind: 'digits'; readonly length: number; readonly value: number; readonly text: string };

const LONGEST = 48;
const LEAD =
  /^(?:(?:best before|best by|use before|use by|expiry|expires|exp|bbe|bbd|bb|manufactured|mfg|mfd|made|opened|end|on|date)(?![a-z])[\s.:]*)+/;
const PIECE = /[a-z]+|\d+/g;
const BETWEEN = /^[\s./,'-]*$/;
const ORDINAL = /^(?:st|nd|rd|th)$/;

/**
 * Cuts what somebody typed, or what a tin says, into month names and runs of digits; undefined when anything else is in
 * it. Case, full-width digits, ordinals (`12th`) and a leading `Best before` or `EXP` do not matter.
 * `dateTokens('EXP 12-Dec-2026')` is the digits 12, the month 12 and the digits 2026.
 */
export function dateTokens(text: string): readonly DateToken[] | undefined {
  if (text.length > LONGEST) return undefined;
  const plain = text
    .normalize('NFKC')
    .toLowerCase()
    .trim()
    .replace(/[‐‑–—]/g, '-')
    .replace(LEAD, '');
  const tokens: DateToken[] = [];
  let end = 0;
  for (const piece of plain.matchAll(PIECE)) {
    const word = piece[0];
    const between = plain.slice(end, piece.index);
    if (!BETWEEN.test(between)) return undefined;
    end = piece.index + word.length;
    const month = monthNamed(word);
    const value = Number(word);
    if (month !== undefined) tokens.push({ kind: 'month', month });
    else if (Number.isInteger(value)) tokens.push({ kind: 'digits', length: word.length, value, text: word });
    else if (!(ORDINAL.test(word) && between === '' && tokens.at(-1)?.kind === 'digits')) return undefined;
  }
  return tokens.length > 0 && BETWEEN.test(plain.slice(end)) ? tokens : undefined;
}
