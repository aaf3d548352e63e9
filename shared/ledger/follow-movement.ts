import { applyChange, type ChangeRefusal } from '@/shared/ledger/apply-change';
import type { Balance } from '@/shared/ledger/balance';
import type { MovementFacts } from '@/shared/ledger/movement';
import { err, type Result } from '@/shared/result/result';

export type FollowRefusal = ChangeRefusal | { code: 'does-not-follow'; field: keyof Balance };

/**
 * The balance after a recorded movement, refusing one that does not start where the balance stands.
 *
 * `does-not-follow` names the first field whose recorded "from" differs: a ledger with a hole or an edit in it.
 * Example: folding a thing's movements in order from `emptyBalance` gives the balance that is kept beside the ledger.
 */
export function followMovement(before: Balance, movement: MovementFacts): Result<Balance, FollowRefusal> {
  const starts: [keyof Balance, string | number | null][] = [
    ['placeId', movement.placeFromId],
    ['condition', movement.conditionFrom],
    ['hold', movement.holdFrom],
    ['jobId', movement.jobFromId],
    ['opened', movement.openedFrom],
  ];
  for (const [field, from] of starts) {
    if (before[field] !== from) return err({ code: 'does-not-follow', field });
  }
  const after = applyChange(before, {
    quantityDelta: movement.quantityDelta,
    placeId: movement.placeToId,
    condition: movement.conditionTo,
    hold: movement.holdTo,
    jobId: movement.jobToId,
    opened: movement.openedTo,
  });
  return after.ok ? { ok: true, value: after.value.balance } : after;
}
