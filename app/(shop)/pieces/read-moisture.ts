const MOST_TENTHS = 2500;

/**
 * A moisture content as a meter shows it, in tenths of a per cent; undefined where it does not read as one. One decimal,
 * point or comma, with or without the sign; up to 250 %, since green wood holds more water than wood. `8,4 %` is 84.
 */
export function readMoisture(text: string): number | undefined {
  const match = /^(\d{1,3})(?:[.,](\d))?\s*%?$/.exec(text.trim());
  if (!match) return undefined;
  const tenths = Number(match[1]) * 10 + Number(match[2] ?? 0);
  return tenths <= MOST_TENTHS ? tenths : undefined;
}
