import type { SuggestionWhy } from '@/shared/shelf-life/types/suggestion';

const WHY: Record<SuggestionWhy, string> = {
  'none-good': 'Nothing else on hand is good for that day.',
  'not-enough': 'That is all that is good for that day, and it is not enough.',
  'lots-mixed': 'No one lot has enough: stir the lots together first, since the colour may differ.',
  'one-lot': 'All of one lot, first to expire first.',
  'first-to-expire': 'First to expire first.',
};

/** Why these containers were suggested, in a sentence: `saySuggestionWhy('first-to-expire')` is `First to expire first.` */
export function saySuggestionWhy(why: SuggestionWhy): string {
  return WHY[why];
}
