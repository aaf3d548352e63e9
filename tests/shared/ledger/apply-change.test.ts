import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyChange } from '@/shared/ledger/apply-change';
import { type Balance, emptyBalance } from '@/shared/ledger/balance';
import type { Change } from '@/shared/ledger/movement';
import { anyBalance, anyChange } from '@/tests/support/any-balance';

const jug: Balance = { ...emptyBalance('container'), quantity: 2_500_000, placeId: 3 };
const codeOf = (before: Balance, change: Change) => {
  const result = applyChange(before, change);
  return result.ok ? 'ok' : result.error.code;
};

describe('applying a change', () => {
  it('takes an amount and leaves the rest, with the movement that says so', () => {
    const result = applyChange(jug, { quantityDelta: -600_000 });
    expect(result.ok && result.value.balance.quantity).toBe(1_900_000);
    expect(result.ok && result.value.movement).toEqual({
      quantityDelta: -600_000,
      placeFromId: 3,
      placeToId: 3,
      conditionFrom: '',
      conditionTo: '',
      holdFrom: 'free',
      holdTo: 'free',
      jobFromId: null,
      jobToId: null,
      openedFrom: null,
      openedTo: null,
    });
  });

  it('takes the last of it and not one more', () => {
    expect(codeOf(jug, { quantityDelta: -2_500_000 })).toBe('ok');
    expect(applyChange(jug, { quantityDelta: -2_500_001 })).toEqual({
      ok: false,
      error: { code: 'below-zero', have: 2_500_000, asked: 2_500_001 },
    });
  });

  it('leaves as it is what is not named, and clears what is named null', () => {
    const held = { ...jug, condition: 'haze', hold: 'on-hold', jobId: 7, opened: '2026-11-20/known' };
    const result = applyChange(held, { placeId: null, jobId: null });
    expect(result.ok && result.value.balance).toEqual({ ...held, placeId: null, jobId: null });
  });

  it.each<[string, Balance, Change, string]>([
    ['half a milligram', jug, { quantityDelta: -0.5 }, 'not-an-exact-amount'],
    ['no number', jug, { quantityDelta: Number.NaN }, 'not-an-exact-amount'],
    ['without end', jug, { quantityDelta: Number.POSITIVE_INFINITY }, 'not-an-exact-amount'],
    ['beyond exact counting', jug, { quantityDelta: Number.MAX_SAFE_INTEGER }, 'not-an-exact-amount'],
    ['a second of one slab', { ...emptyBalance('piece'), quantity: 1 }, { quantityDelta: 1 }, 'more-than-one-piece'],
    ['a quantity of a lot', emptyBalance('lot'), { quantityDelta: 1 }, 'lot-has-no-quantity'],
    ['nothing', jug, {}, 'changes-nothing'],
    ['what it is already', jug, { placeId: 3, hold: 'free', quantityDelta: 0 }, 'changes-nothing'],
  ])('refuses %s', (_, before, change, code) => {
    expect(codeOf(before, change)).toBe(code);
  });

  it('never leaves less than nothing, more than one piece or an inexact amount, and writes from and to as they are', () => {
    let applied = 0;
    fc.assert(
      fc.property(anyBalance, anyChange, (before, change) => {
        const result = applyChange(before, change);
        if (!result.ok) return;
        applied += 1;
        const { balance, movement } = result.value;
        expect(Number.isSafeInteger(balance.quantity) && balance.quantity >= 0).toBe(true);
        if (balance.kind === 'piece') expect(balance.quantity).toBeLessThanOrEqual(1);
        if (balance.kind === 'lot') expect(balance.quantity).toBe(0);
        expect(balance.quantity - before.quantity).toBe(movement.quantityDelta);
        expect([movement.placeFromId, movement.placeToId]).toEqual([before.placeId, balance.placeId]);
        expect([movement.conditionFrom, movement.conditionTo]).toEqual([before.condition, balance.condition]);
        expect([movement.holdFrom, movement.holdTo]).toEqual([before.hold, balance.hold]);
        expect([movement.jobFromId, movement.jobToId]).toEqual([before.jobId, balance.jobId]);
        expect([movement.openedFrom, movement.openedTo]).toEqual([before.opened, balance.opened]);
        expect(balance).not.toEqual(before);
      }),
      { numRuns: 500 },
    );
    expect(applied).toBeGreaterThan(100);
  });
});
