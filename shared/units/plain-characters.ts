const ALIKE: Readonly<Record<string, string>> = {
  '′': "'",
  '‘': "'",
  '’': "'",
  '‛': "'",
  ʹ: "'",
  '´': "'",
  '`': "'",
  '″': '"',
  '“': '"',
  '”': '"',
  '‟': '"',
  ʺ: '"',
  '⁄': '/',
  '∕': '/',
  '−': '-',
  '–': '-',
  '‐': '-',
  '‑': '-',
  µ: 'u',
  μ: 'u',
  '\u2007': '\u00a0',
  '\u2009': '\u00a0',
  '\u202f': '\u00a0',
};

/**
 * Typed text with primes, smart quotes, long dashes, fraction slashes, micro signs and narrow spaces turned into their
 * plain cousins. One character stays one character, so a position in the result is a position in what was typed. `5′
 * 6½″` becomes `5' 6½"`.
 */
export function plainCharacters(text: string): string {
  return text.replace(/[^0-9A-Za-z .,]/g, (character) => ALIKE[character] ?? character);
}
