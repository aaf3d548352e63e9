import type { Outline } from '@/shared/outline/outline';
import { twiceArea } from '@/shared/outline/outline-area';
import type { Nanometres } from '@/shared/units/nanometres';

/**
 * The volume of the wood in cubic millimetres at one thickness, its gaps left out. A slab of 2000 mm × 500 mm × 50 mm
 * has 50 000 000, which is 0.05 m³.
 */
export function outlineVolume(outline: Outline, thickness: Nanometres): number {
  return (twiceArea(outline) / 2e6) * (thickness / 1e6);
}
