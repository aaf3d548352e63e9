/** A number of the book from an address, or undefined: `12` is 12; `0`, `-1`, `1e3` and `12a` are none. */
export function readId(text: string): number | undefined {
  return /^[1-9]\d{0,9}$/.test(text) ? Number(text) : undefined;
}
