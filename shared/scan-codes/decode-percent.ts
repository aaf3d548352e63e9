/**
 * Decodes `%HH` byte by byte, each byte one character, and keeps where each came from. An escape that is cut short or
 * not hexadecimal stays as it stands. Source: RFC 3986 section 2.1; `+` as a space is that of HTML form encoding.
 * `decodePercent('A%2fB', false).text` is `A/B`.
 */
export function decodePercent(
  text: string,
  plusIsSpace: boolean,
): { readonly text: string; readonly places: readonly number[] } {
  let decoded = '';
  const places: number[] = [];
  for (let at = 0; at < text.length; ) {
    const hex = text[at] === '%' ? /^[0-9A-Fa-f]{2}$/.exec(text.slice(at + 1, at + 3))?.[0] : undefined;
    places.push(at);
    if (hex) decoded += String.fromCharCode(Number.parseInt(hex, 16));
    else decoded += plusIsSpace && text[at] === '+' ? ' ' : text.charAt(at);
    at += hex ? 3 : 1;
  }
  return { text: decoded, places };
}
