import type { TopTrouble } from './work-out-top';
import type { WeightTrouble } from './work-out-weight';

export type Said = { readonly says: string; readonly todo: string };

const WHICH_WOOD: Said = {
  says: 'Which wood it is has not been settled, and nothing is guessed.',
  todo: 'Choose it above, under Wood.',
};

/** Why a weight cannot be reckoned and what to do instead. */
export function sayWeightTrouble(trouble: WeightTrouble, wood: string): Said {
  switch (trouble.code) {
    case 'which-wood':
      return WHICH_WOOD;
    case 'made-sheet':
      return {
        says: 'A sheet is glued and pressed: the figures of solid wood do not hold for it.',
        todo: 'Weigh one, or take its maker’s figure. Until then count on two people and a cart.',
      };
    case 'unknown-specific-gravity':
      return {
        says: `No weight of ${wood} is known here, and none is guessed.`,
        todo: 'Weigh it, one end at a time on a bathroom scale, and add the two. Until then take it as too heavy for one.',
      };
    case 'moisture-out-of-range':
      return { says: 'Its reading is above what any wood holds.', todo: 'Read it again.' };
  }
}

/** Why a movement cannot be reckoned and what to do instead. */
export function sayTopTrouble(trouble: TopTrouble, wood: string): Said {
  switch (trouble.code) {
    case 'which-wood':
      return WHICH_WOOD;
    case 'unknown-movement':
      return {
        says: `How much ${wood} moves ${trouble.direction === 'radial' ? 'when quarter sawn' : 'when flat sawn'} is not known here, and nothing is guessed.`,
        todo: 'Measure a cut-off of it across a season, or allow for the wood you know that moves most.',
      };
    case 'seasons-swapped':
      return { says: 'The dry season is damper than the damp one.', todo: 'Swap the two.' };
    case 'moisture-out-of-range':
      return { says: 'Moisture is never below zero.', todo: 'Check the figure.' };
  }
}
