import type { Balance } from '@/shared/ledger/balance';
import type { Change, MovementFacts } from '@/shared/ledger/movement';
import { err, ok, type Result } from '@/shared/result/result';

export type ChangeRefusal =
  | { code: 'below-zero'; have: number; asked: number }
  | { code: 'more-than-one-piece' }
  | { code: 'lot-has-no-quantity' }
  | { code: 'not-an-exact-amount'; asked: number }
  | { code: 'changes-nothing' };

/**
 * The movement that takes a balance through a wanted change, and the balance after it.
 *
 * Quantities are exact integers of the small unit. Errors: `below-zero` (more taken than there is),
 * `more-than-one-piece`, `lot-has-no-quantity`, `not-an-exact-amount` (not a safe integer), `changes-nothing`.
 *
 * Example: 2 500 000 mg, change −600 000 → a movement of −600 000 and a balance of 1 900 000.
 */
export function applyChange(
  before: Balance,
  change: Change,
): Result<{ movement: MovementFacts; balance: Balance }, ChangeRefusal> {
  const delta = change.quantityDelta ?? 0;
  const quantity = before.quantity + delta;
  if (!Number.isSafeInteger(delta) || !Number.isSafeInteger(quantity)) {
    return err({ code: 'not-an-exact-amount', asked: delta });
  }
  if (quantity < 0) return err({ code: 'below-zero', have: before.quantity, asked: -delta });
  if (before.kind === 'piece' && quantity > 1) return err({ code: 'more-than-one-piece' });
  if (before.kind === 'lot' && quantity !== 0) return err({ code: 'lot-has-no-quantity' });
  const balance: Balance = {
    kind: before.kind,
    quantity,
    placeId: change.placeId === undefined ? before.placeId : change.placeId,
    condition: change.condition === undefined ? before.condition : change.condition,
    hold: change.hold === undefined ? before.hold : change.hold,
    jobId: change.jobId === undefined ? before.jobId : change.jobId,
    opened: change.opened === undefined ? before.opened : change.opened,
  };
  const same = (Object.keys(balance) as (keyof Balance)[]).every((key) => balance[key] === before[key]);
  if (same) return err({ code: 'changes-nothing' });
  return ok({
    balance,
    movement: {
      quantityDelta: delta,
      placeFromId: before.placeId,
      placeToId: balance.placeId,
      conditionFrom: before.condition,
      conditionTo: balance.condition,
      holdFrom: before.hold,
      holdTo: balance.hold,
      jobFromId: before.jobId,
      jobToId: balance.jobId,
      openedFrom: before.opened,
      openedTo: balance.opened,
    },
  });
}
