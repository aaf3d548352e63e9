import { type Explained, explained } from '@/shared/wood/explained';

/**
 * Mass in kilograms of a piece once its moisture content is `toMc`, from its mass at `fromMc`: the dry wood stays, water
 * comes or goes, so it needs no species and no shrinkage. Per cent of the dry weight, 0 or more, else it throws. Wood
 * Handbook, Chapter 4, the definition of moisture content. 60 kg at 20 % is 54 kg at 8 %.
 */
export function massAtMoisture(kilograms: number, fromMc: number, toMc: number): Explained<number> {
  if (!(kilograms >= 0 && fromMc >= 0 && toMc >= 0)) throw new RangeError('No mass and no moisture is below zero');
  const mass = (kilograms * (1 + toMc / 100)) / (1 + fromMc / 100);
  return explained(mass, 'mass-at-moisture', { kilograms, fromMc, toMc });
}
