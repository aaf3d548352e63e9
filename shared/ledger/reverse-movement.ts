import type { Balance } from '@/shared/ledger/balance';
import type { Change, MovementFacts } from '@/shared/ledger/movement';
import { err, ok, type Result } from '@/shared/result/result';

export type ReverseRefusal = { code: 'changed-since'; field: 'placeId' | 'condition' | 'hold' | 'jobId' | 'opened' };

/**
 * The change that undoes a movement on a thing as it stands now.
 *
 * A quantity is given back whatever came after it. A place, condition, hold, job or opened day is put back only while
 * it still is what the movement made it: otherwise a later act would be undone in silence, and `changed-since` names it.
 * Example: a movement from cabinet 1 to cabinet 2 is undone by a change to cabinet 1, if the tin still is in cabinet 2.
 */
export function reverseMovement(now: Balance, movement: MovementFacts): Result<Change, ReverseRefusal> {
  const fields = [
    ['placeId', movement.placeFromId, movement.placeToId],
    ['condition', movement.conditionFrom, movement.conditionTo],
    ['hold', movement.holdFrom, movement.holdTo],
    ['jobId', movement.jobFromId, movement.jobToId],
    ['opened', movement.openedFrom, movement.openedTo],
  ] as const;
  const change: Record<string, string | number | null> = {};
  for (const [field, from, to] of fields) {
    if (from === to) continue;
    if (now[field] !== to) return err({ code: 'changed-since', field });
    change[field] = from;
  }
  if (movement.quantityDelta !== 0) change.quantityDelta = -movement.quantityDelta;
  return ok(change as Change);
}
