import { bearsOn } from '@/shared/timeline/bears-on';
import type { Step } from '@/shared/timeline/step';

/**
 * A time line as each of its parts goes through it: the part's own steps and those of the whole job, in the order they came.
 * What waits for what is reckoned within each. Where no two parts have steps of their own that is the line itself, once:
 * a job with one part, named or not, has one line. Steps of top, base and the whole job: top with whole, base with whole.
 */
export function lineOfEachPart<S extends Pick<Step, 'partId'>>(steps: readonly S[]): readonly (readonly S[])[] {
  const parts = [...new Set(steps.flatMap(({ partId }) => partId ?? []))];
  if (parts.length < 2) return [steps];
  return parts.map((partId) => steps.filter((step) => bearsOn(step, { partId })));
}
