import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyChange } from '@/shared/ledger/apply-change';
import { type Balance, emptyBalance } from '@/shared/ledger/balance';
import { differingFields } from '@/shared/ledger/differing-fields';
import { followMovement } from '@/shared/ledger/follow-movement';
import type { Change, MovementFacts } from '@/shared/ledger/movement';
import { readOpened, writeOpened } from '@/shared/ledger/opened';
import { reverseMovement } from '@/shared/ledger/reverse-movement';
import { unwrap } from '@/shared/result/result';
import { anyBalance, anyChange } from '@/tests/support/any-balance';
import { day } from '@/tests/support/day';

const jug: Balance = { ...emptyBalance('container'), quantity: 2_500_000, placeId: 1 };
const apply = (before: Balance, change: Change) => unwrap(applyChange(before, change));

/** A ledger of a thing from its beginning, with every balance on the way. */
function lived(changes: readonly Change[]): { movements: MovementFacts[]; balances: Balance[] } {
  const balances: Balance[] = [emptyBalance('container')];
  const movements: MovementFacts[] = [];
  for (const change of changes) {
    const next = applyChange(balances.at(-1) ?? emptyBalance('container'), change);
    if (!next.ok) continue;
    movements.push(next.value.movement);
    balances.push(next.value.balance);
  }
  return { movements, balances };
}

describe('following a ledger', () => {
  it('comes to the balance that was kept, whatever happened', () => {
    fc.assert(
      fc.property(fc.array(anyChange, { maxLength: 30 }), (changes) => {
        const { movements, balances } = lived(changes);
        const folded = movements.reduce(
          (balance, each) => unwrap(followMovement(balance, each)),
          emptyBalance('container'),
        );
        expect(folded).toEqual(balances.at(-1));
        expect(differingFields(balances.at(-1) ?? folded, folded)).toEqual([]);
      }),
    );
  });

  it.each<[keyof Balance, Partial<MovementFacts>]>([
    ['placeId', { placeFromId: 9 }],
    ['condition', { conditionFrom: 'gelled' }],
    ['hold', { holdFrom: 'recalled' }],
    ['jobId', { jobFromId: 9 }],
    ['opened', { openedFrom: '2026-01-01/known' }],
  ])('refuses a movement that starts from another %s', (field, other) => {
    const { movement } = apply(jug, { quantityDelta: -1 });
    expect(followMovement(jug, { ...movement, ...other })).toEqual({
      ok: false,
      error: { code: 'does-not-follow', field },
    });
  });

  it('refuses a movement that takes more than there is, or changes nothing', () => {
    const { movement } = apply(jug, { quantityDelta: -1 });
    expect(followMovement(jug, { ...movement, quantityDelta: -2_500_001 })).toMatchObject({
      error: { code: 'below-zero' },
    });
    expect(followMovement(jug, { ...movement, quantityDelta: 0 })).toMatchObject({
      error: { code: 'changes-nothing' },
    });
  });

  it('notices a movement that is missing wherever a place is told in it', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 5 }), { minLength: 3, maxLength: 12 }), fc.nat(), (places, at) => {
        const { movements } = lived(places.map((placeId) => ({ placeId })));
        fc.pre(movements.length >= 3);
        const gone = 1 + (at % (movements.length - 2));
        const torn = movements.filter((_, nr) => nr !== gone);
        // A gap that is no gap: the thing came back to where it was.
        fc.pre(torn[gone]?.placeFromId !== torn[gone - 1]?.placeToId);
        const outcomes: string[] = [];
        let balance = emptyBalance('container');
        for (const each of torn) {
          const next = followMovement(balance, each);
          if (next.ok) balance = next.value;
          else outcomes.push(next.error.code);
        }
        expect(outcomes).toContain('does-not-follow');
      }),
    );
  });
});

describe('reversing a movement', () => {
  it('at once restores the balance exactly', () => {
    let reversed = 0;
    fc.assert(
      fc.property(anyBalance, anyChange, (before, change) => {
        const applied = applyChange(before, change);
        if (!applied.ok) return;
        const { balance, movement } = applied.value;
        const undone = apply(balance, unwrap(reverseMovement(balance, movement)));
        expect(undone.balance).toEqual(before);
        expect(undone.movement.quantityDelta).toBe(-movement.quantityDelta || 0);
        reversed += 1;
      }),
      { numRuns: 500 },
    );
    expect(reversed).toBeGreaterThan(100);
  });

  it('all of them, the last first, comes back to the beginning', () => {
    fc.assert(
      fc.property(fc.array(anyChange, { maxLength: 20 }), (changes) => {
        const { movements, balances } = lived(changes);
        const end = [...movements]
          .reverse()
          .reduce(
            (balance, each) => apply(balance, unwrap(reverseMovement(balance, each))).balance,
            balances.at(-1) ?? emptyBalance('container'),
          );
        expect(end).toEqual(emptyBalance('container'));
      }),
    );
  });

  it('gives an amount back whatever was taken since', () => {
    const first = apply(jug, { quantityDelta: -600_000 });
    const second = apply(first.balance, { quantityDelta: -400_000 });
    const back = apply(second.balance, unwrap(reverseMovement(second.balance, first.movement)));
    expect(back.balance.quantity).toBe(2_100_000);
  });

  it.each<['placeId' | 'condition' | 'hold' | 'jobId' | 'opened', Change, Change]>([
    ['placeId', { placeId: 2 }, { placeId: 3 }],
    ['condition', { condition: 'haze' }, { condition: '' }],
    ['hold', { hold: 'on-hold' }, { hold: 'recalled' }],
    ['jobId', { jobId: 5 }, { jobId: 6 }],
    ['opened', { opened: '2026-11-20/guessed' }, { opened: '2026-11-18/known' }],
  ])('does not undo a later %s in silence', (field, first, later) => {
    const one = apply(jug, first);
    const two = apply(one.balance, later);
    expect(reverseMovement(two.balance, one.movement)).toEqual({ ok: false, error: { code: 'changed-since', field } });
  });

  it('looks only at what the movement changed', () => {
    const moved = apply(jug, { placeId: 2 });
    const held = apply(moved.balance, { hold: 'on-hold', condition: 'haze', quantityDelta: -100 });
    expect(unwrap(reverseMovement(held.balance, moved.movement))).toEqual({ placeId: 1 });
  });
});

describe('an opened day in the ledger', () => {
  it('is read as it was written, and a sealed one stays sealed', () => {
    for (const sureness of ['known', 'guessed'] as const) {
      const opened = { on: day('2026-06-12'), sureness };
      expect(writeOpened(opened)).toBe(`2026-06-12/${sureness}`);
      expect(readOpened(writeOpened(opened))).toEqual(opened);
    }
    expect(readOpened(null)).toBeNull();
  });
});
