/** A time zone's name for people, the city first: `sayZone('America/New_York')` is `New York, America`. */
export function sayZone(zone: string): string {
  return zone.replaceAll('_', ' ').split('/').reverse().join(', ');
}

/** What the zone is also called, such as `Eastern Time`; empty where the platform has no name for it. */
export function zoneTitle(zone: string): string {
  const parts = new Intl.DateTimeFormat('en', { timeZone: zone, timeZoneName: 'longGeneric' }).formatToParts(0);
  return parts.find(({ type }) => type === 'timeZoneName')?.value ?? '';
}

const plain = (text: string) => text.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase();

/**
 * The zones that have every word typed, in any case and order, as the beginning of one of their own; those whose city
 * begins with what is typed come first. At most `most`. `new y` finds `America/New_York`; so does `eastern`.
 */
export function searchZones(zones: readonly { zone: string; title: string }[], typed: string, most: number): string[] {
  const words = plain(typed)
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);
  if (words.length === 0) return [];
  const rank = (zone: string) => (plain(sayZone(zone)).startsWith(words[0] ?? '') ? 0 : 1);
  return zones
    .filter(({ zone, title }) => {
      const own = plain(`${sayZone(zone)} ${title}`).split(/[^\p{L}\p{N}]+/u);
      return words.every((word) => own.some((one) => one.startsWith(word)));
    })
    .map(({ zone }) => zone)
    .sort((a, b) => rank(a) - rank(b) || a.localeCompare(b))
    .slice(0, most);
}
