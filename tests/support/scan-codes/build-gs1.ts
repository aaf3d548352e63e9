import type { AiEntry } from '@/shared/scan-codes/ai-entry';

export type Pair = { readonly entry: AiEntry; readonly value: string };

/** Element strings as a symbol carries them, without the FNC1 in front. */
export function buildElementString(pairs: readonly Pair[]): string {
  return pairs
    .map(({ entry, value }, place) => {
      const separator = entry.predefined || place === pairs.length - 1 ? '' : '\u001d';
      return entry.ai + value + separator;
    })
    .join('');
}

/** The form printed for people, brackets in the data escaped. */
export function buildBracketed(pairs: readonly Pair[]): string {
  return pairs.map(({ entry, value }) => `(${entry.ai})${value.replaceAll('(', '\\(')}`).join('');
}

/** A Digital Link URI on a stem: key and qualifiers in the path, the rest in the query. */
export function buildDigitalLink(stem: string, path: readonly Pair[], query: readonly Pair[]): string {
  const inUri = (value: string): string =>
    encodeURIComponent(value).replace(/[!'()*]/g, (character) => `%${character.charCodeAt(0).toString(16)}`);
  const inPath = path.map(({ entry, value }) => `/${entry.ai}/${inUri(value)}`).join('');
  const inQuery = query.map(({ entry, value }) => `${entry.ai}=${inUri(value)}`).join('&');
  return `${stem}${inPath}${inQuery && `?${inQuery}`}`;
}
