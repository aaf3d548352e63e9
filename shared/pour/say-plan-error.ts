import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';

/** A `PourPlanError` as it is, or as it came through a refusal. */
type Facts = { readonly [fact: string]: unknown };

/** Why a pour cannot be planned so, and what to do. An error it does not know is said as a number that cannot be. */
export function sayPlanError({ code, ...facts }: Facts): { what: string; todo: string } {
  return PLAN[String(code)]?.(facts) ?? { what: 'That number cannot be.', todo: 'Check it and its unit.' };
}

const PLAN: Record<string, (facts: Facts) => { what: string; todo: string }> = {
  'not-above-zero': (facts) => ({
    what: `The ${String(facts.field ?? facts.measure ?? 'size')
      .replace(/([A-Z])/g, ' $1')
      .toLowerCase()} must be more than nothing.`,
    todo: 'Give every measure of what is to be filled.',
  }),
  'wood-fills-the-form': () => ({
    what: 'The wood fills the whole form: nothing is left for resin.',
    todo: 'Check the size of the form and how much wood stands in it.',
  }),
  'no-fills': () => ({ what: 'Nothing is chosen to be filled.', todo: 'Tick what the resin goes into.' }),
  'too-few-stations': () => ({
    what: 'A river needs its width at two places at least.',
    todo: 'Measure it at more stations.',
  }),
  'stations-out-of-order': (facts) => ({
    what: `Station ${Number(facts.station) + 1} is not further along than the one before.`,
    todo: 'Give the stations in order.',
  }),
  'outside-range': (facts) => ({ what: `The ${String(facts.field)} cannot be.`, todo: 'Check the number.' }),
  'no-depth-limit': () => ({
    what: 'The sheet of this resin says no depth.',
    todo: 'Say in how many lifts it is poured, or write its depths down under Resin.',
  }),
  'too-warm-for-the-sheet': () => ({
    what: 'The sheet has no depth for so warm a room.',
    todo: 'Cool the room, or say in how many lifts it is poured, and why.',
  }),
  'thinner-than-the-sheet': (facts) => ({
    what: `Even lifts would be ${printLength(nanometres(Number(facts.each)), { prefer: 'metric' })}, thinner than the ${printLength(nanometres(Number(facts.least)), { prefer: 'metric' })} the sheet asks for.`,
    todo: 'Say in how many lifts it is poured.',
  }),
  'step-too-coarse': () => ({
    what: 'A batch is too small for this scale.',
    todo: 'Use a finer scale, or a larger bucket.',
  }),
  'bucket-too-small': () => ({
    what: 'The bucket, or the pot life, is too small for a batch.',
    todo: 'Take a larger bucket, mix faster, or lose less in it.',
  }),
  'too-many-lifts': (facts) => ({
    what: `More than ${facts.most} lifts cannot be right.`,
    todo: 'Check the depth and its unit.',
  }),
  'no-lifts': () => ({ what: 'There has to be one lift at least.', todo: 'Give a number of lifts.' }),
  'no-open-day': () => ({
    what: 'The workshop is closed on every day from then on.',
    todo: 'Choose another first day.',
  }),
  'nothing-left-to-pour': () => ({
    what: 'What was begun fills it already.',
    todo: 'Check the depth: nothing is left to be poured.',
  }),
  'no-mixed-density': () => ({
    what: 'Without a density the volume cannot be weighed.',
    todo: 'Write the density of the mixed resin down under Resin, or of both parts.',
  }),
  'ratios-contradict': () => ({
    what: 'The ratios of the sheet contradict each other.',
    todo: 'Put the sheet right first.',
  }),
  'no-ratio': () => ({ what: 'The sheet has no ratio.', todo: 'Put the sheet right first.' }),
  'no-densities': () => ({ what: 'The sheet has no densities.', todo: 'Put the sheet right first.' }),
  'bad-ratio': () => ({ what: 'The ratio of the sheet cannot be.', todo: 'Put the sheet right first.' }),
};
