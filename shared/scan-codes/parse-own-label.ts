import { err, ok, type Result } from '@/shared/result/result';
import { mod37Check } from '@/shared/scan-codes/iso-7064-mod-37-2';
import { isLabelSeparator, meantInLabel, plainCapital } from '@/shared/scan-codes/label-characters';
import {
  isOwnLabelLetter,
  OWN_LABEL_ALPHABET,
  OWN_LABEL_KINDS,
  OWN_LABEL_LENGTH,
  type OwnLabel,
  type OwnLabelCode,
} from '@/shared/scan-codes/own-label';

/** Why a text is no label of ours. `at` is an index of the text as given, just past its end where one is missing. */
export type OwnLabelError =
  | { readonly code: 'empty'; readonly at: number }
  | { readonly code: 'unknown-kind'; readonly at: number; readonly found: string }
  | { readonly code: 'character-outside-alphabet'; readonly at: number; readonly found: string }
  | { readonly code: 'wrong-length'; readonly at: number; readonly length: number }
  | { readonly code: 'check-character'; readonly at: number };

/**
 * Reads a label of ours as scanned or typed: any case, spaces and dashes anywhere, full-width forms, and in body and
 * check the look-alikes O Q D, I L, Z, S, G, B, U for 0, 1, 2, 5, 6, 8, V. Nothing else is forgiven: one wrong
 * character, or two neighbours swapped, is always refused.
 *
 * Errors: see `OwnLabelError`; `check-character` points at the last character, though any may be the wrong one.
 * Source: ISO/IEC 7064:2003, MOD 37-2. `parseOwnLabel('c 4v9tn-3')` is the container label `C4V9TN3`.
 */
export function parseOwnLabel(text: string): Result<OwnLabel, OwnLabelError> {
  let code = '';
  let lastAt = 0;
  for (let at = 0; at < text.length; at++) {
    const given = text.charAt(at);
    if (isLabelSeparator(given)) continue;
    if (code.length === OWN_LABEL_LENGTH) {
      return err({ code: 'wrong-length', at, length: code.length + 1 });
    }
    const upper = plainCapital(given);
    if (code === '') {
      if (!isOwnLabelLetter(upper)) return err({ code: 'unknown-kind', at, found: given });
      code = upper;
    } else {
      const meant = meantInLabel(upper);
      if (!OWN_LABEL_ALPHABET.includes(meant)) return err({ code: 'character-outside-alphabet', at, found: given });
      code += meant;
    }
    lastAt = at;
  }
  if (code === '') return err({ code: 'empty', at: 0 });
  if (code.length < OWN_LABEL_LENGTH) return err({ code: 'wrong-length', at: text.length, length: code.length });
  if (mod37Check(code.slice(0, -1)) !== code.slice(-1)) return err({ code: 'check-character', at: lastAt });
  const letter = code.charAt(0);
  if (!isOwnLabelLetter(letter)) return err({ code: 'unknown-kind', at: 0, found: letter });
  return ok({ kind: OWN_LABEL_KINDS[letter], code: code as OwnLabelCode });
}
