import { err, ok, type Result } from '@/shared/result/result';
import { mod37Close, mod37Step } from '@/shared/scan-codes/iso-7064-mod-37-2';
import {
  OWN_LABEL_ALPHABET,
  OWN_LABEL_BODY_LENGTH,
  OWN_LABEL_KINDS,
  type OwnLabel,
  type OwnLabelCode,
  type OwnLabelKind,
  type OwnLabelLetter,
} from '@/shared/scan-codes/own-label';

/**
 * `completions[left][state]`: how many ways there are to write so many more characters from a check state and end on a
 * check character inside the alphabet. It lets every serial number have a label, with none skipped.
 */
function countCompletions(): readonly (readonly number[])[] {
  const states = Array.from({ length: 37 }, (_, state) => state);
  const counts = [states.map((state) => Number(OWN_LABEL_ALPHABET.includes(mod37Close(state))))];
  for (let left = 1; left <= OWN_LABEL_BODY_LENGTH; left++) {
    const shorter = counts[left - 1] ?? [];
    counts.push(
      states.map((state) =>
        [...OWN_LABEL_ALPHABET].reduce((sum, character) => sum + (shorter[mod37Step(state, character)] ?? 0), 0),
      ),
    );
  }
  return counts;
}

const COMPLETIONS = countCompletions();

/**
 * Multiplier of the scramble, a prime near the golden section of the smallest count of labels, 1,729,668: neighbouring
 * serial numbers land far apart, and being prime and no divisor of a count, no two land together.
 */
const STRIDE = 1_069_001;

/** Where serial number 0 lands, so that the first labels look like all others. */
const OFFSET = 417_203;

const LETTERS = Object.keys(OWN_LABEL_KINDS) as OwnLabelLetter[];

type MintError = { readonly code: 'serial-out-of-range'; readonly last: number };

/**
 * The label of a serial number of its kind. Serial numbers are whole, from 0 to about 1.73 million (`last` in the
 * error says exactly); each has a label of its own, the same for ever, and neighbours differ in several characters so
 * that a misread label is not the next tin along.
 *
 * The check character is ISO/IEC 7064 MOD 37-2 over kind letter and body; only bodies whose check character falls in
 * the label alphabet are numbered. Error: `serial-out-of-range`. `mintOwnLabel('container', 0)` is `C4V9TN3`.
 */
export function mintOwnLabel(kind: OwnLabelKind, serial: number): Result<OwnLabel, MintError> {
  const letter = LETTERS.find((candidate) => OWN_LABEL_KINDS[candidate] === kind) ?? 'C';
  let state = mod37Step(0, letter);
  const labels = COMPLETIONS[OWN_LABEL_BODY_LENGTH]?.[state] ?? 0;
  if (!Number.isInteger(serial) || serial < 0 || serial >= labels) {
    return err({ code: 'serial-out-of-range', last: labels - 1 });
  }
  // Both factors are below 2^21, so the product is exact.
  let rank = (serial * STRIDE + OFFSET) % labels;
  let code: string = letter;
  for (let left = OWN_LABEL_BODY_LENGTH - 1; left >= 0; left--) {
    for (const character of OWN_LABEL_ALPHABET) {
      const next = mod37Step(state, character);
      const count = COMPLETIONS[left]?.[next] ?? 0;
      if (rank < count) {
        code += character;
        state = next;
        break;
      }
      rank -= count;
    }
  }
  return ok({ kind, code: `${code}${mod37Close(state)}` as OwnLabelCode });
}
