import type { SearchedShape } from '@/shared/fit/searched-shape';
import type { TurnedField } from '@/shared/fit/turned-field';

/** Where a shape lies on a slab: the place it is held by, in micrometres, and the turn of its length, in radians. */
export type Placement = { readonly x: number; readonly y: number; readonly angle: number };

export type SearchOptions = {
  /** The grain may run so far off the length, in radians, either way. */
  readonly window: number;
  /** A shape that could be this much larger all round, in micrometres, is sure to be found. */
  readonly tolerance: number;
};

/** A place, or the proof that there is none: the number of stretches of angle it took. */
export type SearchAnswer =
  | { readonly fits: true; readonly placement: Placement; readonly stretches: number }
  | { readonly fits: false; readonly stretches: number };

/**
 * Whether a convex shape can lie among the obstacles at some angle of the window: branch and bound. A stretch of angles
 * is put aside when even the part of the shape covered at all of them can lie nowhere, which is proved over whole
 * stretches of places (see `TurnedField`); else its middle angle is tried, and it is halved. At the smallest stretch no
 * point of the shape turns by more than half the tolerance, and places are tried at most half of it apart. So a yes is a
 * place; a no means that the shape widened all round by `tolerance` fits at no place and no angle of the window.
 */
export function searchPlaces(
  field: TurnedField,
  shape: SearchedShape,
  { window, tolerance }: SearchOptions,
): SearchAnswer {
  field.use(shape);
  const finest = tolerance / 2;
  let level: { readonly angle: number; readonly spread: number }[] = [{ angle: 0, spread: shape.round ? 0 : window }];
  let stretches = 0;
  while (level.length) {
    const next: typeof level = [];
    for (const { angle, spread } of level) {
      stretches += 1;
      const moved = shape.reach * spread;
      if (field.turn(angle, 0)) {
        const found = field.look(Math.max(finest, moved / 4), true);
        if (found) return { fits: true, placement: { ...field.onSlab(found.x, found.y), angle }, stretches };
      }
      if (moved <= finest) continue;
      if (field.turn(angle, spread) && !field.look(Math.max(finest, moved / 2), false)) continue;
      next.push({ angle: angle - spread / 2, spread: spread / 2 }, { angle: angle + spread / 2, spread: spread / 2 });
    }
    level = next.sort((a, b) => Math.abs(a.angle) - Math.abs(b.angle));
  }
  return { fits: false, stretches };
}
