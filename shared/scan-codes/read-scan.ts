import { type AimSymbology, aimSymbology } from '@/shared/scan-codes/aim-symbology';
import { asElementString, asUndeclaredGs1 } from '@/shared/scan-codes/attempt-gs1';
import { cleanScanText } from '@/shared/scan-codes/clean-scan-text';
import { OWN_LABEL_ALPHABET, OWN_LABEL_KINDS } from '@/shared/scan-codes/own-label';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';
import { dropFirst, type PlacedText, without } from '@/shared/scan-codes/placed-text';
import { FNC1 } from '@/shared/scan-codes/read-element-string';
import { type Attempt, nearly } from '@/shared/scan-codes/scan-attempt';
import type { Gs1Reading, Malformed, ScanContext, ScanInput, ScanReading } from '@/shared/scan-codes/scan-reading';
import { toGtin14 } from '@/shared/scan-codes/to-gtin14';

/** No code anyone prints is longer: the largest Data Matrix holds 3,116 digits. Longer texts are not looked into. */
const LONGEST = 4096;
const SHOWN_OF_TOO_LONG = 80;

const NOTHING: Attempt<never> = {};

const OWN_AS_PRINTED = new RegExp(`^[${Object.keys(OWN_LABEL_KINDS).join('')}][- ]?[${OWN_LABEL_ALPHABET}]{6}$`, 'i');

/** The lengths a symbology may carry a GTIN in; ITF carries other things in other lengths. */
const GTIN_LENGTHS: Readonly<Record<string, readonly number[]>> = {
  none: [8, 12, 13, 14],
  'gtin-13': [12, 13],
  'gtin-8': [8],
  'gtin-14': [14],
};

function asGtin(placed: PlacedText, symbology: AimSymbology | undefined): Attempt<ScanReading<never>> {
  const payload = symbology?.payload ?? 'none';
  const lengths = GTIN_LENGTHS[payload];
  if (!lengths) return NOTHING;
  const typed = payload === 'none';
  const digits = typed ? without(placed, (character) => character === ' ' || character === '-') : placed;
  const addOn = symbology?.id === ']E3' && (digits.text.length === 15 || digits.text.length === 18);
  const number = addOn ? digits.text.slice(0, 13) : digits.text;
  const mayBeSomethingElse = typed || payload === 'gtin-14';
  if (!lengths.includes(number.length)) {
    const fault = { code: 'wrong-length', at: number.length, length: number.length } as const;
    return mayBeSomethingElse ? NOTHING : { malformed: nearly('gtin', digits, fault) };
  }
  const gtin = toGtin14(number);
  if (gtin.ok) return { reading: { kind: 'gtin', ...gtin.value } };
  if (typed && gtin.error.code === 'not-digits') return NOTHING;
  return { malformed: nearly('gtin', digits, { at: number.length, ...gtin.error }) };
}

/** A label of ours typed with look-alikes, or one that almost is. Decoders mistake no letters, so only when typed. */
function asTypedOwnLabel(placed: PlacedText): Attempt<ScanReading<never>> {
  const label = parseOwnLabel(placed.text);
  if (label.ok) return { reading: { kind: 'own', label: label.value.kind, code: label.value.code } };
  const shaped = /^[CSBHFP] ?- ?[0-9A-Z]{4,8}$/i.test(placed.text) || label.error.code === 'check-character';
  return shaped ? { malformed: nearly('own', placed, label.error) } : NOTHING;
}

/** The symbology given or found in front of the text, and the text behind it. */
function splitSymbology(input: ScanInput): { placed: PlacedText; symbology: AimSymbology | undefined } {
  const placed = cleanScanText(input.text);
  const inFront = aimSymbology(placed.text.slice(0, 3));
  const symbology = (input.symbology === undefined ? undefined : aimSymbology(input.symbology)) ?? inFront;
  return { placed: inFront ? dropFirst(placed, 3) : placed, symbology };
}

/**
 * Reads whatever was scanned or typed. It never throws and takes time in proportion to the text, which is cut off at
 * 4,096 characters (`unknown`, `too-long`).
 *
 * The symbology decides first: GS1 symbols are element strings, retail symbols are GTINs, and any other declared
 * symbol is plain, so that `]C0` is never read as element strings (a Digital Link URI or the bracketed form in it
 * still is). Without a symbology the text must speak for itself: FNC1, brackets, a Digital Link, or a key with a right
 * check digit in front.
 * Who wins: a label of ours as printed, then a valid GS1 message, then a taught code, then a typed label with
 * look-alikes, then a GTIN. What is left is `unknown`, with `malformed` saying what it nearly was.
 * Sources: ISO/IEC 15424 (symbology identifiers); GS1 General Specifications 7.8; GS1 Digital Link 1.3.0.
 * `readScan({ text: ']C1011231231231233310ABC123' }, { today })` is kind `gs1` with lot `ABC123`.
 */
export function readScan<Meaning = unknown>(input: ScanInput, context: ScanContext<Meaning>): ScanReading<Meaning> {
  if (input.text.length > LONGEST) {
    const params = { limit: String(LONGEST) };
    const code = cleanScanText(input.text.slice(0, SHOWN_OF_TOO_LONG)).text.replaceAll(FNC1, '^');
    return { kind: 'unknown', code, malformed: { looksLike: 'nothing', code: 'too-long', at: LONGEST, params } };
  }
  const { placed, symbology } = splitSymbology(input);
  const payload = symbology?.payload ?? 'none';
  const open = payload === 'none' || payload === 'plain';

  if (open && OWN_AS_PRINTED.test(placed.text)) {
    const label = parseOwnLabel(placed.text);
    if (label.ok) return { kind: 'own', label: label.value.kind, code: label.value.code };
  }
  let gs1: Attempt<Gs1Reading> = NOTHING;
  if (payload === 'gs1') gs1 = asElementString(placed, context.today);
  else if (open) gs1 = asUndeclaredGs1(placed, symbology, context.today);
  if (gs1.reading) return gs1.reading;

  const code = placed.text.replaceAll(FNC1, '^');
  const meaning = context.taught?.(code);
  if (meaning !== undefined) return { kind: 'taught', code, meaning };

  const own = payload === 'none' ? asTypedOwnLabel(placed) : NOTHING;
  if (own.reading) return own.reading;
  const gtin = asGtin(placed, symbology);
  if (gtin.reading) return gtin.reading;

  const empty: Malformed = { looksLike: 'nothing', code: 'empty', at: 0, params: {} };
  const malformed = gs1.malformed ?? own.malformed ?? gtin.malformed ?? (code === '' ? empty : undefined);
  return { kind: 'unknown', code, ...(malformed && { malformed }) };
}
