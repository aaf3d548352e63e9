import type { WoodSourceId } from '@/shared/wood/sources';

/** Days for lumber 1 in thick, piled green outdoors, to come to 20 % MC: shortest in good weather, longest through a winter. */
export type AirDryingDays = { readonly least: number; readonly most: number; readonly source: WoodSourceId };

const DAYS: Readonly<Record<string, readonly [number, number]>> = {
  'red-alder': [20, 180],
  'white-ash': [60, 200],
  'american-basswood': [40, 150],
  'american-beech': [70, 200],
  'paper-birch': [40, 200],
  'sweet-birch': [70, 200],
  'yellow-birch': [70, 200],
  butternut: [60, 200],
  'black-cherry': [70, 200],
  'eastern-cottonwood': [50, 150],
  'american-elm': [50, 150],
  'rock-elm': [80, 180],
  hackberry: [30, 150],
  'shagbark-hickory': [60, 200],
  pecan: [60, 200],
  'red-maple': [30, 120],
  'silver-maple': [30, 120],
  'sugar-maple': [50, 200],
  'northern-red-oak': [70, 200],
  'white-oak': [80, 250],
  sweetgum: [70, 300],
  'american-sycamore': [30, 150],
  tanoak: [180, 365],
  'black-tupelo': [70, 200],
  'black-walnut': [70, 200],
  'black-willow': [30, 150],
  'yellow-poplar': [40, 150],
  baldcypress: [100, 300],
  'douglas-fir': [20, 200],
  'western-hemlock': [60, 200],
  'western-larch': [60, 120],
  'eastern-white-pine': [60, 200],
  'longleaf-pine': [30, 150],
  'ponderosa-pine': [15, 150],
  'sugar-pine': [15, 90],
  redwood: [60, 365],
  'sitka-spruce': [40, 150],
};

/** Every species taken together, for one the list does not hold. Common practice. */
export const ANY_WOOD: AirDryingDays = { least: 30, most: 250, source: 'common-practice' };

/**
 * Published air-drying days of a species to 20 % MC at 1 in, or the range of any wood where none is known.
 * Forest Products Laboratory Technical Note 233 (1960), from memory. Black cherry takes 70 to 200.
 */
export function airDryingDays(speciesId: string | null): AirDryingDays {
  const found = speciesId === null ? undefined : DAYS[speciesId];
  return found ? { least: found[0], most: found[1], source: 'air-drying-times' } : ANY_WOOD;
}
