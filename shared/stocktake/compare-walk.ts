/** What the book says of a thing now. Amounts in the thing's small unit; instants in milliseconds. */
export type BookThing = {
  readonly stockId: number;
  readonly kind: 'container' | 'piece';
  readonly quantity: number;
  readonly placeId: number | null;
  /** When the book last wrote a movement of it. */
  readonly changedAt: number;
};

/** One thing seen on the walk. `counted` where it was weighed or counted. */
export type SeenThing = { readonly stockId: number; readonly seenAt: number; readonly counted: number | null };

/**
 * What a walk says of one thing:
 * `here` as the book has it · `different` here, and more or less in it · `extra` seen here, and stands elsewhere by the
 * book · `back` seen, and by the book there is nothing left of it · `missing` stands here by the book, and nobody saw it ·
 * `changed` the book wrote something of it after it was seen, or after the walk began where it was not.
 */
export type WalkStatus = 'here' | 'different' | 'extra' | 'back' | 'missing' | 'changed';

export type WalkLine = {
  readonly stockId: number;
  readonly status: WalkStatus;
  /** Counted less what the book has; 0 where nothing was counted. */
  readonly delta: number;
};

export type Walk = {
  readonly startedAt: number;
  /** The place walked and every place inside it. */
  readonly places: ReadonlySet<number>;
  /** What stands there by the book, and whatever was seen. */
  readonly things: readonly BookThing[];
  readonly seen: readonly SeenThing[];
};

/**
 * Compares a walk through a place with the book, thing by thing, in the order the things are given.
 *
 * What the book wrote of a thing after somebody saw it is never judged by what was seen: it is `changed`, unless it is
 * here and nothing was counted in it, because then it is still where it was seen. What came, left or was used after the
 * walk began and was not seen is `changed` too, and not missing. A movement at the very instant of the scan counts as
 * before it. A thing that is neither expected nor seen has no line.
 *
 * `extra` and `back` can carry a `delta`; a piece is whole or gone, and never differs.
 * Example: 2 500 000 mg by the book, weighed as 2 100 000 mg, nothing written since → `different`, delta −400 000.
 */
export function compareWalk({ startedAt, places, things, seen }: Walk): readonly WalkLine[] {
  const sightings = new Map(seen.map((each) => [each.stockId, each]));
  return things.flatMap((thing): WalkLine[] => {
    const sighting = sightings.get(thing.stockId);
    const stands = thing.quantity > 0 && thing.placeId !== null && places.has(thing.placeId);
    if (!sighting && !stands) return [];
    return [{ stockId: thing.stockId, ...judgeThing(thing, sighting, { stands, startedAt }) }];
  });
}

function judgeThing(
  thing: BookThing,
  sighting: SeenThing | undefined,
  { stands, startedAt }: { stands: boolean; startedAt: number },
): { status: WalkStatus; delta: number } {
  if (!sighting) return { status: thing.changedAt > startedAt ? 'changed' : 'missing', delta: 0 };
  const counted = thing.kind === 'container' ? sighting.counted : null;
  if (thing.changedAt > sighting.seenAt && !(stands && counted === null)) return { status: 'changed', delta: 0 };
  const delta = counted === null ? 0 : counted - thing.quantity;
  if (thing.quantity === 0) return { status: counted === 0 ? 'here' : 'back', delta };
  if (!stands) return { status: 'extra', delta };
  return { status: delta === 0 ? 'here' : 'different', delta };
}
