import type { MaterialSystem } from '@/shared/shelf-life/types/policy';
import type { PairedPart, Reason } from '@/shared/shelf-life/types/reason';

/**
 * Whether two containers are parts A and B of one system, from either side. Another system, the same part twice, or a
 * material that belongs to no system is a stop for every purpose: a wrong hardener does not cure later.
 */
export function reasonsOfPairing(own: MaterialSystem | undefined, pairedWith: PairedPart | undefined): Reason[] {
  if (!pairedWith) return [];
  const { trials: _, ...named } = pairedWith;
  const stop = { code: 'wrong-system', weight: 'stop', pairedWith: named, own } as const;
  if (!own) return [{ ...stop, because: 'no-system' }];
  if (own.id !== pairedWith.systemId) return [{ ...stop, because: 'other-system' }];
  if (own.part === pairedWith.part) return [{ ...stop, because: 'same-part' }];
  return [];
}
