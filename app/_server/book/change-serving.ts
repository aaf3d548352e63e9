import type { Command } from '@/app/_server/act';
import { keepServing, readServing } from '@/app/_server/book/serving';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';

export type ServingChange = { network: boolean };

const SAYS = { true: 'open to the workshop’s network', false: 'this computer only' };

/**
 * Opens the book to the workshop's network, or closes it again, from the next start on. Written in the book: it is about
 * who may write there. The file is put back where the entry did not come to stand.
 */
export const changeServing: Command<ServingChange, ServingChange> = async (book, by, input) => {
  let changed: ServingChange | undefined;
  try {
    return await writeEntry(book, { ...by, kind: 'settings-changed', request: input }, async (pen) => {
      const before = await readServing();
      if (before.network === input.network) return err({ code: 'changes-nothing' });
      const answer = { network: input.network };
      await pen.enter(
        { why: `network: ${SAYS[`${before.network}`]} → ${SAYS[`${input.network}`]}, from the next start` },
        answer,
      );
      await keepServing(answer);
      changed = before;
      return ok(answer);
    });
  } catch (error) {
    if (changed) await keepServing(changed);
    throw error;
  }
};
