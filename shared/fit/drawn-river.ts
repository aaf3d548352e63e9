import { coarseRing } from '@/shared/outline/coarse-ring';
import type { Outline, Ring } from '@/shared/outline/outline';

/** A screen shows no finer, micrometres. Areas are of the outlines themselves. */
const DRAWN_TO = 250;

/**
 * A river as it is drawn: the finished top and the wood of each bank, micrometres, with no more points than a screen can
 * show apart (a quarter of a millimetre).
 */
export function drawnRiver({ top, woods }: { readonly top: Ring; readonly woods: readonly Outline[] }): {
  readonly top: Ring;
  readonly woods: Outline[];
} {
  const drawn = (ring: Ring) => coarseRing(ring, DRAWN_TO);
  return { top: drawn(top), woods: woods.map(({ ring, holes }) => ({ ring: drawn(ring), holes: holes.map(drawn) })) };
}
