import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Condition } from '@/shared/shelf-life/types/container-facts';
import type { Policy } from '@/shared/shelf-life/types/policy';
import type { Reason } from '@/shared/shelf-life/types/reason';

/**
 * What was seen in the container. Gelled or skinned through is spoilt for every purpose, and so is frozen where freezing
 * ruins; frozen where it does not asks to be thawed. Crystals, haze, settling, darkening and storage outside the stated
 * temperatures ask for care. Each condition counts once, however often it was noted.
 */
export function reasonsOfCondition({ policy, container }: Candidate): Reason[] {
  return [...new Set(container.conditions)].map((condition) => reasonOf(condition, policy));
}

function reasonOf(condition: Condition, policy: Policy): Reason {
  switch (condition) {
    case 'gelled':
    case 'skinned-through':
      return { code: condition, weight: 'stop' };
    case 'frozen':
      return policy.freezingRuins ? { code: 'frozen-ruined', weight: 'stop' } : { code: 'frozen-thaw', weight: 'care' };
    case 'stored-out-of-range':
      return { code: condition, weight: 'care', storage: policy.storage };
    case 'crystals':
    case 'haze':
    case 'settled':
    case 'darkened':
      return { code: condition, weight: 'care' };
  }
}
