import type { Condition } from '@/shared/shelf-life/types/container-facts';

/** What can be seen in a container, in the words of a list and of a sentence. */
export const CONDITION_WORDS: Record<Condition, string> = {
  gelled: 'gelled',
  'skinned-through': 'skinned through',
  frozen: 'has been frozen',
  crystals: 'crystals',
  haze: 'hazy',
  settled: 'settled',
  darkened: 'darkened',
  'stored-out-of-range': 'stood too cold or too warm',
};
