import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { usableWidths } from '@/shared/outline/usable-widths';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';

/** The narrowest and the widest a measured piece is. */
export type UsableWidths = { readonly narrowest: Nanometres; readonly widest: Nanometres };

/**
 * What a piece is called wide by its outline. One tapped on a photo comes to a point at its ends a little: there a fiftieth
 * of the length is passed over, as for its width at the ends.
 */
export function widthsOfOutline(outline: Outline, source: 'stations' | 'photo' | 'cut'): UsableWidths | null {
  const { left, right } = boundsOf(outline.ring);
  const passed = source === 'photo' ? (right - left) / 50 : 0;
  const widths = usableWidths(outline, { from: left + passed, to: right - passed });
  if (!widths) return null;
  const nm = (um: number) => nanometres(Math.round(um) * 1000);
  return { narrowest: nm(widths.narrowest.width), widest: nm(widths.widest.width) };
}
