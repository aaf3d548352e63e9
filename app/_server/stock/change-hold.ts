import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';
import type { HoldState } from '@/shared/shelf-life/types/lot-facts';

/** A hold on a lot, a container or a piece, or its release: a recorded decision with its reason. */
export type ChangeHold = { stockId: number; hold: HoldState; why: string };

export const changeHold: Command<ChangeHold, { hold: HoldState }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: input.hold === 'free' ? 'released' : 'held', request: input }, async (pen) => {
    const why = input.why.trim();
    if (why === '')
      return err({ code: input.hold === 'free' ? 'release-needs-reason' : 'reason-needed', field: 'why' });
    await pen.enter({ why }, { hold: input.hold });
    const moved = await pen.move(input.stockId, { hold: input.hold });
    return moved.ok ? ok({ hold: input.hold }) : moved;
  });
