import type { Command } from '@/app/_server/act';
import { type Pen, writeEntry } from '@/app/_server/ledger/write-entry';
import { stillHeld } from '@/app/_server/trace/still-held';
import { err, ok } from '@/shared/result/result';
import type { HoldState } from '@/shared/shelf-life/types/lot-facts';

/** A hold on a lot, a container or a piece, or its release: a recorded decision with its reason. */
export type ChangeHold = { stockId: number; hold: HoldState; why: string };

/** `with`: how many containers of a released lot are free again with it. */
export type ChangedHold = { hold: HoldState; with: number };

/**
 * Changes a hold. A lot's hold is looked at wherever a container's is, so that holding it is one line; releasing it releases
 * its containers that a trace holds too, which were set apart for the lot's sake. One held for a reason of its own stays.
 */
export const changeHold: Command<ChangeHold, ChangedHold> = (book, by, input) =>
  writeEntry<ChangedHold>(
    book,
    { ...by, kind: input.hold === 'free' ? 'released' : 'held', request: input },
    async (pen) => {
      const { stockId, hold } = input;
      const why = input.why.trim();
      if (why === '') return err({ code: hold === 'free' ? 'release-needs-reason' : 'reason-needed', field: 'why' });
      const alike = hold === 'free' ? await heldWithLot(pen, stockId) : [];
      const answer = { hold, with: alike.length };
      await pen.enter({ why }, answer);
      for (const each of [stockId, ...alike]) {
        const moved = await pen.move(each, { hold });
        if (!moved.ok) return moved;
      }
      return ok(answer);
    },
  );

/** The containers of this lot that a press of a trace holds; none where it is no lot. */
async function heldWithLot(pen: Pen, lotId: number): Promise<number[]> {
  const rows = await pen.tx.container.findMany({
    where: { lotId, stock: { hold: 'on-hold' } },
    orderBy: { stockId: 'asc' },
    select: { stockId: true },
  });
  return (await stillHeld(pen.tx, { stockIds: rows.map(({ stockId }) => stockId) })).map(({ stockId }) => stockId);
}
