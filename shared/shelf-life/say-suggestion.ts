import type { SayContext } from '@/shared/shelf-life/say-reason';
import type { Suggestion, SuggestionWhy } from '@/shared/shelf-life/types/suggestion';

const WHY: Record<SuggestionWhy, string> = {
  'none-good': 'Nothing else on hand is good for that day.',
  'not-enough': 'That is all that is good for that day, and it is not enough.',
  'lots-mixed': 'No one lot has enough: stir the lots together first, since the colour may differ.',
  'one-lot': 'All of one lot, first to expire first.',
  'first-to-expire': 'First to expire first.',
};

/**
 * A suggestion in a sentence or two: `Take 500 g from T-14, then 400 g from T-09. First to expire first.` With some still
 * to come from the container in hand: `Take 300 g from this one, then 600 g from T-14.`
 */
export function saySuggestion(suggestion: Suggestion, { sayAmount = String }: SayContext = {}): string {
  const { containers, withThis, why } = suggestion;
  const parts = containers.map((one) => `${sayAmount(one.take)} from ${one.label}`);
  if (withThis > 0) parts.unshift(`${sayAmount(withThis)} from this one`);
  return parts.length > 0 ? `Take ${parts.join(', then ')}. ${WHY[why]}` : WHY[why];
}
