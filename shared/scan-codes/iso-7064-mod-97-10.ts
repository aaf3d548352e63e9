/**
 * The remainder modulo 97 of a text read as one number, letters counting two digits (A is 10 ... Z is 35).
 * A text that carries its two MOD 97-10 check digits at the end leaves 1. The caller passes 0-9 and A-Z only.
 *
 * Source: ISO/IEC 7064:2003, MOD 97-10; the letter values are those of ISO 13616 (IBAN).
 * `mod97('79444')` is `1`: 44 are the check digits of 794.
 */
export function mod97(text: string): number {
  let remainder = 0;
  for (const character of text) {
    const value = Number.parseInt(character, 36);
    remainder = (remainder * (value > 9 ? 100 : 10) + value) % 97;
  }
  return remainder;
}
