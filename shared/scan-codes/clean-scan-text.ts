import type { PlacedText } from '@/shared/scan-codes/placed-text';
import { FNC1 } from '@/shared/scan-codes/read-element-string';

const SPACE = /\s/;
const INVISIBLE = /[\p{Cc}\p{Cf}]/u;

/** One character made plain: FNC1 in its visible stand-in, full-width forms, any space; '' for the invisible. */
function plain(character: string): string {
  if (character === FNC1 || character === '\u241d') return FNC1;
  if (SPACE.test(character)) return ' ';
  if (character >= '\uff01' && character <= '\uff5e') return String.fromCharCode(character.charCodeAt(0) - 0xfee0);
  return INVISIBLE.test(character) ? '' : character;
}

/**
 * Makes a scanned or typed text plain: full-width forms become ASCII, runs of spaces, tabs and line ends become one
 * space and go at either end, control and invisible characters go, but FNC1 (GS, 0x1D) stays. Every kept character
 * remembers where it was. `cleanScanText('\u0002 ABC\r\n').text` is `ABC`.
 */
export function cleanScanText(given: string): PlacedText {
  let text = '';
  const places: number[] = [];
  let end = 0;
  let spaceAt: number | undefined;
  for (let at = 0; at < given.length; at++) {
    const character = plain(given.charAt(at));
    if (character === '') continue;
    if (character === ' ') {
      spaceAt ??= at;
      continue;
    }
    if (spaceAt !== undefined && text !== '') {
      text += ' ';
      places.push(spaceAt);
    }
    spaceAt = undefined;
    text += character;
    places.push(at);
    end = at + 1;
  }
  places.push(end);
  return { text, places };
}
