import type { FitAsk } from '@/app/_server/fits/fit-ask';
import { topArea } from '@/shared/fit/top-area';
import type { HalfSizes } from '@/shared/fit/top-shape';
import { speciesMeant } from '@/shared/wood/species-meant';
import { woodMass } from '@/shared/wood/wood-mass';

/** What indoor furniture is commonly dried to, per cent. Common practice. */
const DRY = 8;

/**
 * What the finished top weighs of this wood, grams: its area by its thickness, at the moisture asked for or 8 %. Undefined
 * where no thickness is asked for, or the name may mean more than one wood. Where a river runs through it, less the river
 * of so many square millimetres, which is resin.
 */
export function weighTop(species: string, sizes: HalfSizes, ask: FitAsk, riverArea = 0): number | undefined {
  const [wood, other] = speciesMeant(species).exact;
  if (ask.thickness === undefined || !wood || other) return undefined;
  const cubicMetres = (topArea(sizes) / 1e12 - riverArea / 1e6) * (ask.thickness / 1e9);
  const mass = woodMass(wood, Math.max(0, cubicMetres), ask.mostTenths === undefined ? DRY : ask.mostTenths / 10);
  return mass.ok ? Math.round(mass.value.value * 1000) : undefined;
}
