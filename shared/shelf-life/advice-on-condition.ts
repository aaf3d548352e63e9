import { isMaterialKind, type MaterialKind } from '@/shared/shelf-life/material-kinds';
import { printTemperatureRange } from '@/shared/units/print-temperature-range';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What is seen in a container that can still be put right, if it can be put right at all. */
export type MendableCondition = 'crystals' | 'haze' | 'settled' | 'darkened' | 'frozen-thaw';

/** What the advice depends on: the kind of material, as the product says it, and the units the book is read in. */
export type AdviceContext = { readonly materialKind: string; readonly prefer: UnitSystem };

type Family = 'resin' | 'hardener' | 'oil' | 'solvent' | 'water-finish' | 'water-glue' | 'moisture-glue';

/** Materials that are put right in the same way. What is in no family gets no advice but its data sheet. */
const FAMILIES: Partial<Record<MaterialKind, Family>> = {
  'resin-a': 'resin',
  'resin-b': 'hardener',
  'hardwax-oil': 'oil',
  'two-part-oil': 'oil',
  'oil-finish': 'oil',
  varnish: 'solvent',
  lacquer: 'solvent',
  'pre-catalysed-lacquer': 'solvent',
  'shellac-mixed': 'solvent',
  'contact-cement': 'solvent',
  waterborne: 'water-finish',
  pva: 'water-glue',
  'hide-glue': 'water-glue',
  'polyurethane-glue': 'moisture-glue',
  cyanoacrylate: 'moisture-glue',
};

const NEUTRAL = 'Do as its data sheet says before you use it. If it says nothing, set it aside.';
const SHEET = 'Its data sheet comes first.';
const NO_HEAT = 'Never warm it over a flame or a heater: it burns.';

/**
 * What to do about a condition that is seen in a material of this kind, with temperatures in the book's own units. Only
 * resin and hardener are ever warmed; what burns never is. A kind that is not known gets the neutral sentence. Every
 * piece of advice defers to the data sheet. The advice is common practice, as makers' technical bulletins give it.
 * Crystals in `hardwax-oil`: `Never warm it over a flame or a heater: it burns. …`
 */
export function adviceOnCondition(condition: MendableCondition, { materialKind, prefer }: AdviceContext): string {
  const family = isMaterialKind(materialKind) ? FAMILIES[materialKind] : undefined;
  return family ? ADVICE[family](prefer)[condition] : NEUTRAL;
}

const ADVICE: Record<Family, (prefer: UnitSystem) => Record<MendableCondition, string>> = {
  resin: (prefer) => ({
    crystals: `Warm it as its data sheet says, often to ${printTemperatureRange(50, 60, { prefer })}, with the lid loose and well away from flame. Stir until every crystal is gone, and let it cool before mixing. Undissolved crystals leave soft spots.`,
    haze: 'Warm it gently as its data sheet says until it is clear, stir, and let it cool. If the haze stays, pour a small test.',
    settled: `Stir each part to the bottom before you measure, unless the container is used whole. ${SHEET}`,
    darkened: `It may cure but shift the colour. Compare a small test where colour shows. ${SHEET}`,
    'frozen-thaw': `Let it thaw slowly at room temperature, look for crystals, stir it through, and pour a small test. ${SHEET}`,
  }),
  hardener: () => ({
    crystals:
      'Warm it only as its data sheet says, with gloves on and in moving air: warm hardener gives off vapour that can make you allergic. Stir until every crystal is gone, and let it cool before mixing.',
    haze: 'Let it come to room temperature with the lid on, and stir. If the haze stays, do as its data sheet says and pour a small test.',
    settled: `Stir each part to the bottom before you measure, unless the container is used whole. ${SHEET}`,
    darkened: `It may cure but shift the colour. Compare a small test where colour shows. ${SHEET}`,
    'frozen-thaw': `Let it thaw slowly at room temperature with the lid on, stir it through, and pour a small test. ${SHEET}`,
  }),
  oil: () => ({
    crystals: `${NO_HEAT} Let it stand closed in a warm room and stir the wax in. Strain it; if grains stay, set it aside. ${SHEET}`,
    haze: `${NO_HEAT} Let it stand closed at room temperature and stir. If the haze stays, try it on scrap. ${SHEET}`,
    settled: `Stir it in from the bottom until it is even, and strain out any skin. ${SHEET}`,
    darkened: `It may dry darker or slower. Compare it on scrap of the same wood. ${SHEET}`,
    'frozen-thaw': `${NO_HEAT} Let it thaw closed at room temperature, stir it, and try it on scrap. ${SHEET}`,
  }),
  solvent: () => ({
    crystals: `${NO_HEAT} Let it stand closed at room temperature and stir it in. Strain it; if grains stay, set it aside. ${SHEET}`,
    haze: `${NO_HEAT} Let it stand closed at room temperature and stir. If the haze stays, try it on scrap. ${SHEET}`,
    settled: `Stir it in from the bottom until it is even, and strain out any skin. ${SHEET}`,
    darkened: `It may dry darker or slower. Compare it on scrap of the same wood. ${SHEET}`,
    'frozen-thaw': `${NO_HEAT} Let it thaw closed at room temperature, stir it, and try it on scrap. ${SHEET}`,
  }),
  'water-finish': () => ({
    crystals: `Let it stand at room temperature and stir it slowly. If it stays grainy, do not use it. ${SHEET}`,
    haze: `Stir it slowly: many are milky until they dry. Try it on scrap. ${SHEET}`,
    settled: `Stir it in slowly from the bottom, without froth, and strain it. ${SHEET}`,
    darkened: `It may have taken rust from the tin. Compare it on scrap of the same wood. ${SHEET}`,
    'frozen-thaw': `Let it thaw at room temperature and stir it slowly. If it stays grainy, do not use it. ${SHEET}`,
  }),
  'water-glue': () => ({
    crystals: `Let it stand at room temperature and stir it. If it stays grainy, do not use it. ${SHEET}`,
    haze: `Stir it and glue up a piece of scrap first. ${SHEET}`,
    settled: `Stir it until it is even. If it stays lumpy or stringy, do not use it. ${SHEET}`,
    darkened: `Glue up a piece of scrap first, and break it: the wood has to give before the glue. ${SHEET}`,
    'frozen-thaw': `Let it thaw at room temperature and stir it. If it stays grainy, lumpy or stringy, do not use it. ${SHEET}`,
  }),
  'moisture-glue': () => ({
    crystals: `Leave it closed until it is at room temperature. If grains stay, damp has got in: do not use it. ${SHEET}`,
    haze: `Leave it closed until it is at room temperature. If the haze stays, glue up a piece of scrap first. ${SHEET}`,
    settled: `Turn the closed bottle over a few times, and glue up a piece of scrap first. ${SHEET}`,
    darkened: `Glue up a piece of scrap first, and break it: the wood has to give before the glue. ${SHEET}`,
    'frozen-thaw': `Let it come to room temperature before you open it, since cold glue draws damp. Then glue up a piece of scrap. ${SHEET}`,
  }),
};
