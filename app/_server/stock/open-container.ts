import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { loadContainer } from '@/app/_server/stock/load-container';
import { refuseOpening } from '@/app/_server/stock/refuse-opening';
import { dateIn } from '@/shared/calendar/date-in';
import { type Opened, writeOpened } from '@/shared/ledger/opened';
import { err, ok } from '@/shared/result/result';

/** Writes that a container was opened; or, where it was guessed before, the day that is now known. */
export const openContainer: Command<{ label: string; opened: Opened; why?: string }, { label: string }> = (
  book,
  by,
  input,
) =>
  writeEntry(book, { ...by, kind: 'opened', request: input }, async (pen) => {
    const line = await loadContainer(pen.tx, input.label);
    if (!line) return err({ code: 'not-found' });
    const before = line.candidate.container.opened;
    if (before?.sureness === 'known' && input.opened.sureness === 'guessed')
      return err({ code: 'already-open', facts: { on: before.on } });
    const refusal = refuseOpening(line, input.opened, dateIn(pen.book.timeZone, pen.now));
    if (refusal) return err(refusal);
    await pen.enter({ why: input.why ?? '', productId: line.productId }, { label: line.label });
    const moved = await pen.move(line.stockId, { opened: writeOpened(input.opened) });
    return moved.ok ? ok({ label: line.label }) : moved;
  });
