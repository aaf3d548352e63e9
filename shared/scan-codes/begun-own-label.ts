import { isLabelSeparator, meantInLabel, plainCapital } from '@/shared/scan-codes/label-characters';
import { isOwnLabelLetter, OWN_LABEL_ALPHABET, OWN_LABEL_LENGTH } from '@/shared/scan-codes/own-label';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';

/**
 * The beginning of a label of ours as it is stored, from what was typed of it so far: a kind letter and at least one
 * character more, with the same forgiveness as `parseOwnLabel`. `undefined` where no label can begin so.
 *
 * Look-alikes are read as meant only in a whole label or beside a digit or a dash: otherwise `cold` would begin the
 * labels at `C010`.
 * `begunOwnLabel('c-o4v')` is `C04V`.
 */
export function begunOwnLabel(text: string): string | undefined {
  const whole = parseOwnLabel(text);
  if (whole.ok) return whole.value.code;
  const forgiving = /[\p{Nd}\p{Pd}\u2212]/u.test(text);
  let code = '';
  for (const given of text) {
    if (isLabelSeparator(given)) continue;
    const upper = plainCapital(given);
    if (code === '') {
      if (!isOwnLabelLetter(upper)) return undefined;
      code = upper;
      continue;
    }
    const meant = forgiving ? meantInLabel(upper) : upper;
    if (!OWN_LABEL_ALPHABET.includes(meant) || code.length === OWN_LABEL_LENGTH) return undefined;
    code += meant;
  }
  return code.length > 1 ? code : undefined;
}
