import type { Outline } from '@/shared/outline/outline';
import { usableWidths } from '@/shared/outline/usable-widths';

/** Whether a piece is as wide at one place as at any other, so that no place of it is the narrow one. */
export function isStraight(outline: Outline): boolean {
  const widths = usableWidths(outline);
  return widths !== undefined && widths.widest.width - widths.narrowest.width < 1;
}
