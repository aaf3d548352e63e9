/** A relative humidity as a hygrometer shows it, 0 up to but not including 100 %; undefined where it does not read as one. `45 %` is 45. */
export function readHumidity(text: string): number | undefined {
  const found = /^(\d{1,2}(?:[.,]\d)?)\s*%?$/.exec(text.trim());
  return found ? Number(found[1]?.replace(',', '.')) : undefined;
}
