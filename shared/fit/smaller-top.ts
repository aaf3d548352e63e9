import type { FoundPlace } from '@/shared/fit/pieces-to-place';
import type { HalfSizes } from '@/shared/fit/top-shape';
import type { Nanometres } from '@/shared/units/nanometres';

/** A smaller top that does lie in the wood, and where. */
export type SmallerTop = {
  readonly length: Nanometres;
  readonly width: Nanometres;
  readonly found: FoundPlace;
  readonly sizes: HalfSizes;
};
