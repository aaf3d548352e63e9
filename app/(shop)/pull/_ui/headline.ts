/**
 * A verdict's line as the one or two lines of the panel: `Good to 12 Dec. Needed on 19 Dec.` is two, and what follows a
 * second sentence stays with it.
 */
export function headline(text: string): readonly [string] | readonly [string, string] {
  const cut = /[.!?]\s+(?=\p{Lu})/u.exec(text);
  if (!cut) return [text];
  const end = cut.index + 1;
  return [text.slice(0, end), text.slice(end).trim()];
}
