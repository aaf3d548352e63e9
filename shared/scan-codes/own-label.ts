/** What a label of ours is stuck on, by the letter it begins with. */
export const OWN_LABEL_KINDS = {
  C: 'container',
  S: 'slab',
  B: 'board',
  H: 'sheet',
  F: 'offcut',
  P: 'place',
} as const;

export type OwnLabelLetter = keyof typeof OWN_LABEL_KINDS;
export type OwnLabelKind = (typeof OWN_LABEL_KINDS)[OwnLabelLetter];

/**
 * A label as stored and as put in its 2D code: kind letter, five body characters, one check character, no dash. It
 * begins with a letter, so it can be neither a GTIN nor a GS1 element string, and it is no web address.
 */
export type OwnLabelCode = string & { readonly __brand: 'OwnLabelCode' };

export type OwnLabel = { readonly kind: OwnLabelKind; readonly code: OwnLabelCode };

/**
 * The characters of body and check: the ten digits and ten letters. Left out, and why:
 * - O Q D look like 0, I L like 1, Z like 2, S like 5, G like 6, B like 8: each is read as that digit when typed
 * - U looks like V, and is read as V
 * - C F H P (with B and S) are the kind letters: a kind letter stands only in front, so a swap with the character
 *   behind it can never read as another kind
 * - A E, so that no label spells a word (O, I and U are out already)
 */
export const OWN_LABEL_ALPHABET = '0123456789JKMNRTVWXY';

export const OWN_LABEL_BODY_LENGTH = 5;

/** Kind letter, body and check. */
export const OWN_LABEL_LENGTH = 1 + OWN_LABEL_BODY_LENGTH + 1;

export function isOwnLabelLetter(character: string): character is OwnLabelLetter {
  return Object.hasOwn(OWN_LABEL_KINDS, character);
}
