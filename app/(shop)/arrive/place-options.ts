import type { PlaceLine } from '@/app/_server/places/place-page';

/** The places as a list to choose from, each with the place it is inside. */
export function placeOptions(places: readonly PlaceLine[]): { label: string; name: string; inside: string | null }[] {
  const names = new Map(places.map((place) => [place.id, place.name]));
  return places.map(({ label, name, parentId }) => ({
    label,
    name,
    inside: parentId === null ? null : (names.get(parentId) ?? null),
  }));
}
