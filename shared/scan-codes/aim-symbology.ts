/** How the text behind a symbology identifier is to be read. */
type AimPayload =
  /** GS1 element strings, FNC1 sent as GS (0x1D). */
  | 'gs1'
  /** A GTIN of this many digits and, but for an add-on behind it (`]E3`), nothing else. */
  | 'gtin-13'
  | 'gtin-8'
  | 'gtin-14'
  /** Digits of a price or issue beside the main symbol, never a product by themselves. */
  | 'add-on'
  /** Whatever the printer put there: never read as GS1 element strings. */
  | 'plain';

export type AimSymbology = {
  readonly id: string;
  readonly name: string;
  readonly payload: AimPayload;
};

/** Code letter, name. Every modifier of a letter is plain data unless named in `SPECIAL`. */
const LETTERS: Readonly<Record<string, string>> = {
  A: 'Code 39',
  B: 'Telepen',
  C: 'Code 128',
  D: 'Code One',
  E: 'EAN/UPC',
  F: 'Codabar',
  G: 'Code 93',
  H: 'Code 11',
  I: 'Interleaved 2 of 5',
  J: 'DotCode',
  K: 'Code 16K',
  L: 'PDF417',
  M: 'MSI',
  N: 'Anker',
  O: 'Codablock',
  P: 'Plessey',
  Q: 'QR Code',
  R: 'Straight 2 of 5 (two-bar start)',
  S: 'Straight 2 of 5 (three-bar start)',
  T: 'Code 49',
  U: 'MaxiCode',
  X: 'another symbology',
  Z: 'no bar code (keyed or magnetic)',
  c: 'Channel Code',
  d: 'Data Matrix',
  e: 'GS1 DataBar or Composite',
  h: 'Han Xin Code',
  o: 'OCR',
  p: 'PosiCode',
  s: 'SuperCode',
  z: 'Aztec Code',
};

const SPECIAL: Readonly<Record<string, readonly [name: string, payload: AimPayload]>> = {
  C1: ['GS1-128', 'gs1'],
  E0: ['EAN-13, UPC-A or UPC-E', 'gtin-13'],
  E1: ['EAN/UPC two-digit add-on', 'add-on'],
  E2: ['EAN/UPC five-digit add-on', 'add-on'],
  E3: ['EAN-13, UPC-A or UPC-E with its add-on', 'gtin-13'],
  E4: ['EAN-8', 'gtin-8'],
  I1: ['ITF-14', 'gtin-14'],
  J1: ['GS1 DotCode', 'gs1'],
  K1: ['Code 16K, FNC1 first', 'gs1'],
  Q3: ['GS1 QR Code', 'gs1'],
  Q4: ['GS1 QR Code with extended channels', 'gs1'],
  T1: ['Code 49, FNC1 first', 'gs1'],
  d2: ['GS1 DataMatrix', 'gs1'],
  d5: ['GS1 DataMatrix with extended channels', 'gs1'],
  e0: ['GS1 DataBar or Composite', 'gs1'],
  h2: ['Han Xin Code, GS1 mode', 'gs1'],
  z1: ['Aztec Code, FNC1 first', 'gs1'],
};

/**
 * What an AIM symbology identifier (`]` + code letter + modifier) means and how the data behind it is to be read.
 * Undefined where the text is not of that form or the letter is not assigned; such data is plain.
 *
 * Sources: ISO/IEC 15424:2008 (letters and modifiers, from memory); the GS1 rows C1, E0, E4, I1, Q3, d2, e0 also GS1
 * General Specifications 5.1.3, table of symbology identifiers. An Interleaved 2 of 5 with a verified check digit
 * (`]I1`) is how ITF-14 arrives. `aimSymbology(']C1')` is `{ id: ']C1', name: 'GS1-128', payload: 'gs1' }`, while
 * `]C0`, plain Code 128, has the payload `plain`.
 */
export function aimSymbology(id: string): AimSymbology | undefined {
  if (!/^\][A-Za-z][0-9A-Za-z]$/.test(id)) return undefined;
  const special = SPECIAL[id.slice(1)];
  if (special) return { id, name: special[0], payload: special[1] };
  const name = LETTERS[id.charAt(1)];
  return name === undefined ? undefined : { id, name, payload: 'plain' };
}
