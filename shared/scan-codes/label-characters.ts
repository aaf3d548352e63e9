const LOOK_ALIKES: Readonly<Record<string, string>> = {
  O: '0',
  Q: '0',
  D: '0',
  I: '1',
  L: '1',
  Z: '2',
  S: '5',
  G: '6',
  B: '8',
  U: 'V',
};

/** Spaces, control characters and every kind of hyphen or dash, wherever they stand. */
const SEPARATOR = /[\s\p{Cc}\p{Cf}\p{Pd}\u2212]/u;

/** Whether a character of a typed label only parts it and says nothing: `isLabelSeparator('-')` is true. */
export function isLabelSeparator(character: string): boolean {
  return SEPARATOR.test(character);
}

/** A typed character as a plain capital, full-width forms and small letters too: `plainCapital('ｋ')` is `K`. */
export function plainCapital(given: string): string {
  const plain = given >= '\uff01' && given <= '\uff5e' ? String.fromCharCode(given.charCodeAt(0) - 0xfee0) : given;
  return plain >= 'a' && plain <= 'z' ? plain.toUpperCase() : plain;
}

/** What a capital in body or check of a label stands for where it is a look-alike: `meantInLabel('O')` is `0`. */
export function meantInLabel(capital: string): string {
  return LOOK_ALIKES[capital] ?? capital;
}
