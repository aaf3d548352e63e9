import fc from 'fast-check';
import type { Balance, StockKind } from '@/shared/ledger/balance';
import type { Change } from '@/shared/ledger/movement';

const place = fc.option(fc.integer({ min: 1, max: 4 }));
const condition = fc.constantFrom('', 'gelled', 'crystals', 'crystals,haze');
const hold = fc.constantFrom('free', 'on-hold', 'quarantine', 'recalled');
const opened = fc.option(fc.constantFrom('2026-11-20/known', '2026-06-01/guessed'));

/** How many of a thing there can be. */
const quantityOf: Record<StockKind, fc.Arbitrary<number>> = {
  lot: fc.constant(0),
  piece: fc.integer({ min: 0, max: 1 }),
  container: fc.oneof(fc.nat({ max: 5_000_000 }), fc.maxSafeNat()),
};

/** A thing as it may stand. */
export const anyBalance: fc.Arbitrary<Balance> = fc.constantFrom<StockKind>('lot', 'container', 'piece').chain((kind) =>
  fc.record({
    kind: fc.constant(kind),
    quantity: quantityOf[kind],
    placeId: place,
    condition,
    hold,
    jobId: place,
    opened,
  }),
);

/** A change as it may be wanted: sensible or not, of anything or of nothing. */
export const anyChange: fc.Arbitrary<Change> = fc.record(
  {
    quantityDelta: fc.oneof(
      fc.integer({ min: -5_000_000, max: 5_000_000 }),
      fc.constantFrom(-1, 0, 1),
      fc.maxSafeInteger(),
    ),
    placeId: place,
    condition,
    hold,
    jobId: place,
    opened,
  },
  { requiredKeys: [] },
);
