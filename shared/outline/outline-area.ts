import { type Outline, ringsOf } from '@/shared/outline/outline';
import { twiceRingArea } from '@/shared/outline/ring-area';

/** Twice the area of the wood in square micrometres, its gaps left out; exact, and a safe integer up to 20 m × 20 m. */
export function twiceArea(outline: Outline): number {
  return Number(ringsOf(outline).reduce((sum, ring) => sum + twiceRingArea(ring), 0n));
}

/** The area of the wood in square millimetres, its gaps left out. A slab of 2000 mm × 500 mm has 1 000 000. */
export function outlineArea(outline: Outline): number {
  return twiceArea(outline) / 2e6;
}
