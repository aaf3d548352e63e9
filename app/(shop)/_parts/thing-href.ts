/** The page of whatever an own label is stuck on: `C…` a container, `P…` a place, any other a piece of wood. */
export function thingHref(label: string): string {
  if (label.startsWith('C')) return `/containers/${label}`;
  return label.startsWith('P') ? `/places/${label}` : `/pieces/${label}`;
}
