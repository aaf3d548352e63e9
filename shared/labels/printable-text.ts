import type { Typeface } from './typeface';

const BLANK = /[\p{Z}\p{Cc}]+/gu;
/** Signs of a measure that label typefaces lack, in letters. */
const SPELT: Readonly<Record<string, string>> = { '≈': 'about', '→': 'to', '−': '-' };
/** Formatting, unassigned and private characters, half surrogates, and marks that no letter could absorb. */
const UNSEEN = /[\p{Cf}\p{Cs}\p{Co}\p{Cn}\p{M}]/gu;
const PICTOGRAPH = /^[\p{Extended_Pictographic}\p{Emoji_Modifier}\p{Regional_Indicator}]$/u;

/**
 * The part of a text that can stand on a label. Runs of blanks and control characters become one space; formatting
 * characters and pictographs are left out; `≈` is written `about` where it cannot be drawn; any other character the typeface cannot draw becomes `?`, so that a reader sees
 * something was there.
 *
 * @example printableText('Oil 🛢️\tsatin', typeface) // 'Oil satin'
 */
export function printableText(text: string, typeface: Pick<Typeface, 'draws'>): string {
  const seen = text.normalize('NFC').replace(BLANK, ' ').replace(UNSEEN, '');
  const drawn = Array.from(seen, (character) => {
    if (character === ' ' || typeface.draws(character)) return character;
    return SPELT[character] ?? (PICTOGRAPH.test(character) ? '' : '?');
  });
  return drawn.join('').replace(/ +/g, ' ').trim();
}
