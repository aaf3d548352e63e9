const CHARACTERS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*';

/** The running state after one more character: shift by two, add. Zero is the state before the first character. */
export function mod37Step(state: number, character: string): number {
  return ((state + CHARACTERS.indexOf(character)) * 2) % 37;
}

/** The check character that closes a state: the one that makes the weighted sum leave 1. It may be `*` (value 36). */
export function mod37Close(state: number): string {
  return CHARACTERS.charAt((38 - state) % 37);
}

/**
 * The check character of a text of 0-9 and A-Z, pure system MOD 37-2. Because 37 is prime and every weight is a
 * power of two below it in order, each wrong character and each swap of neighbours changes the sum.
 *
 * Source: ISO/IEC 7064:2003, pure systems, MOD 37-2. `mod37Check('G123489654321')` is `Y`.
 */
export function mod37Check(text: string): string {
  let state = 0;
  for (const character of text) state = mod37Step(state, character);
  return mod37Close(state);
}
