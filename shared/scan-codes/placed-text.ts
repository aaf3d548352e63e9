/** A text that has been cleaned, and for each of its characters, and its end, the index it had before. */
export type PlacedText = { readonly text: string; readonly places: readonly number[] };

/** The index before cleaning of an index after it; past the end is the end. */
export function placeOf(placed: PlacedText, at: number): number {
  return placed.places[Math.min(at, placed.text.length)] ?? 0;
}

/** The text from an index on, places kept. */
export function dropFirst(placed: PlacedText, count: number): PlacedText {
  return { text: placed.text.slice(count), places: placed.places.slice(count) };
}

/** The text without the characters a test names, places kept. */
export function without(placed: PlacedText, unwanted: (character: string) => boolean): PlacedText {
  let text = '';
  const places: number[] = [];
  for (let at = 0; at < placed.text.length; at++) {
    const character = placed.text.charAt(at);
    if (unwanted(character)) continue;
    text += character;
    places.push(placed.places[at] ?? 0);
  }
  places.push(placed.places[placed.text.length] ?? 0);
  return { text, places };
}
