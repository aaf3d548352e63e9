import { type SuggestInput, suggestContainers } from '@/shared/shelf-life/suggest-containers';
import type { Suggestion } from '@/shared/shelf-life/types/suggestion';

/**
 * The containers to promise for an amount: as `suggestContainers` has it, but what the job takes from already goes before
 * what it does not, so that three coats come out of one tin and not of two. Where colour shows, only if that is enough for
 * all of it. `begun`: the ids of those containers, as far as they are simply good on the day.
 *
 * Example: tins of 1000 and 1000 that end on one day, 245 taken from the first: 245 more come from the first, too, though
 * the second is the fuller one.
 */
export function chooseContainers(
  input: SuggestInput & { asked: number },
  begun: ReadonlySet<string>,
): Pick<Suggestion, 'containers' | 'why'> {
  const known = input.candidates.filter((one) => begun.has(one.container.id));
  const first = known.length > 0 ? suggestContainers({ ...input, candidates: known }) : undefined;
  if (first?.reaches) return first;
  if (!first || input.colourShows) return suggestContainers(input);
  const got = first.containers.reduce((sum, one) => sum + one.take, 0);
  const candidates = input.candidates.filter((one) => !begun.has(one.container.id));
  const rest = suggestContainers({ ...input, candidates, asked: input.asked - got });
  return { containers: [...first.containers, ...rest.containers], why: rest.why };
}
