import type { PlaceLine } from '@/app/_server/places/place-page';

/** A place with the places inside it. */
export type PlaceBranch = PlaceLine & {
  /** Things in it and in all that is inside it. */
  all: number;
  inside: PlaceBranch[];
};

/** The places as a tree, in the order given. `under` starts it at one place's own children. */
export function placeTree(places: readonly PlaceLine[], under: number | null = null): PlaceBranch[] {
  return places
    .filter((place) => place.parentId === under)
    .map((place) => {
      const inside = placeTree(places, place.id);
      return { ...place, inside, all: inside.reduce((sum, one) => sum + one.all, place.things) };
    });
}

/** The tree as a list to choose from, each with the names above it: `Shelf 2, Cabinet, Shop`. */
export function placeChoices(
  branches: readonly PlaceBranch[],
  above: readonly string[] = [],
): { label: string; says: string }[] {
  return branches.flatMap((branch) => {
    const path = [branch.name, ...above];
    return [{ label: branch.label, says: path.join(', ') }, ...placeChoices(branch.inside, path)];
  });
}
