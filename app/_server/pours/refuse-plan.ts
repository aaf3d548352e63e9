import type { Refusal } from '@/app/_server/refusal';
import type { PourPlanError } from '@/shared/pour/plan-pour';

/** The field of the plan's form that an error stands beside. */
const FIELD: Record<PourPlanError['code'], string> = {
  'no-ratio': 'systemId',
  'no-densities': 'systemId',
  'bad-ratio': 'systemId',
  'ratios-contradict': 'systemId',
  'no-mixed-density': 'systemId',
  'not-above-zero': 'depth',
  'wood-fills-the-form': 'wood',
  'no-fills': 'fills',
  'too-few-stations': 'stations',
  'stations-out-of-order': 'stations',
  'outside-range': 'leakage',
  'no-depth-limit': 'lifts',
  'too-warm-for-the-sheet': 'room',
  'thinner-than-the-sheet': 'lifts',
  'step-too-coarse': 'step',
  'bucket-too-small': 'bucket',
  'no-lifts': 'lifts',
  'no-open-day': 'first',
  'too-many-lifts': 'lifts',
  'nothing-left-to-pour': 'depth',
};

/** Why a pour cannot be planned so, as a refusal beside its field. */
export function refusePlan(error: PourPlanError): Refusal {
  const facts: Record<string, string | number | null> = { why: error.code };
  for (const [name, value] of Object.entries(error)) {
    if (name !== 'code' && (typeof value === 'number' || typeof value === 'string')) facts[name] = value;
  }
  return { code: 'pour-does-not-work', field: FIELD[error.code], facts };
}
