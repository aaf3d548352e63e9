import type { WalkStatus } from '@/shared/stocktake/compare-walk';

/**
 * What can be done about a line of a stocktake: `gone` takes it off the book, `move` puts it where it was seen, `correct`
 * writes what was counted, `leave` does nothing.
 */
export type WalkChoice = 'gone' | 'move' | 'correct' | 'leave';

/** What is known of a line beside its status. */
export type ChoiceFacts = { readonly status: WalkStatus; readonly kind: 'container' | 'piece'; readonly delta: number };

/**
 * The choices for a line, the one to begin with first; none where there is nothing to decide.
 *
 * Missing: left (it may turn up, and a walk may be half done), or gone. Different: corrected, or left. Seen here and standing elsewhere: moved here, or
 * left. The book says there is nothing left of it: a container that was weighed can be put back with what is in it; one
 * that was not, and a piece of wood, can only be left, because how it went is undone by the entry that took it. What
 * changed since it was seen can only be left: it has to be seen again.
 * Example: an extra tin, weighed 400 g lighter → `['move', 'leave']`; moving it writes the weight too.
 */
export function choicesOf({ status, kind, delta }: ChoiceFacts): readonly WalkChoice[] {
  switch (status) {
    case 'here':
      return [];
    case 'missing':
      return ['leave', 'gone'];
    case 'different':
      return ['correct', 'leave'];
    case 'extra':
      return ['move', 'leave'];
    case 'back':
      return kind === 'container' && delta > 0 ? ['correct', 'leave'] : ['leave'];
    case 'changed':
      return ['leave'];
  }
}
