import type { Demand, Supply } from '@/shared/promise/supply-and-demand';
import { day } from '@/tests/support/day';

export const TODAY = day('2026-12-01');
/** The day so many days after 1 Dec 2026. */
export const later = (days: number) => day(`2026-12-${String(1 + days).padStart(2, '0')}`);

/** On hand from today, ending so many days on. */
export const onHand = (amount: number, ends?: number, promised = 0): Supply => ({
  id: `tin ${amount}/${ends}`,
  words: `tin of ${amount}`,
  kind: 'on-hand',
  from: TODAY,
  lastGoodDay: ends === undefined ? undefined : later(ends),
  amount,
  promised,
});

/** An order that comes so many days on. */
export const comes = (amount: number, on: number, ends?: number): Supply => ({
  ...onHand(amount, ends),
  id: `order ${amount}/${on}`,
  words: 'Tarn',
  kind: 'arriving',
  from: later(on),
});

export const wants = (amount: number, on: number, id = `${amount} on ${on}`): Demand => ({
  id,
  words: 'Desk',
  on: later(on),
  amount,
});
