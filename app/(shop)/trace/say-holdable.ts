import type { Holdable } from '@/app/_server/trace/holdable';

/** What one press would put on hold, in a few sentences: what is left and free, and the lots for what is still to come. */
export function sayHoldable({ free, freeLots }: Holdable): string {
  const things =
    free.length === 0
      ? ''
      : `${free.length === 1 ? 'One thing is' : `${free.length} things are`} left and free: containers with something in them, sealed ones of the lot too, and wood in the shop.`;
  const lots = freeLots.map(({ code, title }) => (code ? `lot ${code} of ${title}` : `a lot of ${title}`));
  const held =
    lots.length === 0
      ? ''
      : `${free.length === 0 ? 'Held is' : 'Held with them is'} ${listOf(lots)}, so that a container of it that comes in later waits too.`;
  return [things, held, 'On hold, Pull says Stop to each of them.'].filter(Boolean).join(' ');
}

const MOST_NAMED = 4;

function listOf(words: readonly string[]): string {
  if (words.length > MOST_NAMED) return `each of their ${words.length} lots`;
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
