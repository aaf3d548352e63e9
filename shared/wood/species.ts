import type { WoodSourceId } from '@/shared/wood/sources';

/** A published figure with its source, or `null` where none is known here. It is never guessed. */
export type Figure = { readonly value: number; readonly source: WoodSourceId } | null;

export type Species = {
  /** Stable id, kebab-case. */
  readonly id: string;
  readonly name: string;
  readonly botanical: string;
  readonly kind: 'hardwood' | 'softwood';
  /** Other names people search by. */
  readonly aliases: readonly string[];
  /** Dry weight over green volume, and over volume at 12 % MC, against water. */
  readonly gravityGreen: Figure;
  readonly gravity12: Figure;
  /** Shrinkage from green to ovendry, per cent of the green size. */
  readonly shrinkRadial: Figure;
  readonly shrinkTangential: Figure;
  readonly shrinkVolume: Figure;
  /** Change per size per one per cent of MC, 6 to 14 %. */
  readonly moveRadial: Figure;
  readonly moveTangential: Figure;
};

type Pair = readonly [number | null, number | null];
type Triple = readonly [number | null, number | null, number | null];
type Cited<T> = readonly [T, WoodSourceId | readonly WoodSourceId[]] | null;

/** One row of a species list as it is written down: figures in the order of their table, then the source of each. */
export type SpeciesRow = {
  readonly id: string;
  readonly name: string;
  readonly botanical: string;
  readonly aliases?: readonly string[];
  readonly gravity?: Cited<Pair>;
  readonly shrink?: Cited<Triple>;
  readonly move?: Cited<Pair>;
};

/** A species from its row. A source that is a list gives one source for each figure. */
export function speciesFromRow(kind: Species['kind'], row: SpeciesRow): Species {
  const figure = (cited: Cited<readonly (number | null)[]> | undefined, at: number): Figure => {
    const value = cited?.[0][at] ?? null;
    const source = typeof cited?.[1] === 'string' ? cited[1] : cited?.[1][at];
    return value === null || source === undefined ? null : { value, source };
  };
  return {
    id: row.id,
    name: row.name,
    botanical: row.botanical,
    kind,
    aliases: row.aliases ?? [],
    gravityGreen: figure(row.gravity, 0),
    gravity12: figure(row.gravity, 1),
    shrinkRadial: figure(row.shrink, 0),
    shrinkTangential: figure(row.shrink, 1),
    shrinkVolume: figure(row.shrink, 2),
    moveRadial: figure(row.move, 0),
    moveTangential: figure(row.move, 1),
  };
}
