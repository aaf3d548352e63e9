/** A name as it is compared: lower case, accents dropped, words of letters and figures. `'Wych-Elm '` is `wych elm`. */
export function plainName(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();
}
