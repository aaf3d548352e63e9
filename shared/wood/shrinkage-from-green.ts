import { type Explained, explained } from '@/shared/wood/explained';
import { FIBRE_SATURATION } from '@/shared/wood/wood-density';

/**
 * Shrinkage from green to `mc`, per cent of the green size, from the shrinkage to ovendry: in proportion to the water lost
 * below 30 % MC, none above. Wood Handbook, Chapter 4; at 20 % a third and at 6 % four fifths of it. Throws below 0 %.
 * Black walnut, tangential 7.8 %, has shrunk 4.68 % at 12 %.
 */
export function shrinkageFromGreen(toOvendry: number, mc: number): Explained<number> {
  if (!(mc >= 0)) throw new RangeError(`Not a moisture content: ${mc}`);
  const dried = Math.max(0, FIBRE_SATURATION - mc) / FIBRE_SATURATION;
  return explained(toOvendry * dried, 'shrinkage-from-green', { toOvendryPercent: toOvendry, mc });
}
