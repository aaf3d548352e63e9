import type { BestPlace } from '@/shared/fit/best-place';
import type { Nearly } from '@/shared/fit/nearly';
import type { Nanometres } from '@/shared/units/nanometres';

/** What a no, or the no before a nearly, rests on. */
type FitProof = {
  /** A top larger by this all round would fit at no place and no angle of the window. */
  readonly tolerance: Nanometres;
  /** How many stretches of angle it took. */
  readonly stretches: number;
};

/** Whether one slab, or a pair, makes the top. */
export type FitAnswer =
  | { readonly answer: 'yes'; readonly place: BestPlace }
  | { readonly answer: 'nearly'; readonly missing: Nearly; readonly proof: FitProof }
  | { readonly answer: 'no'; readonly proof: FitProof };
