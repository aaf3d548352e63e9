import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { STRUCK, struckSelect } from '@/app/_server/stock/struck-readings';
import { err, ok } from '@/shared/result/result';

/** Strikes out a reading that was taken or written wrong. It stays in the book, struck; it counts for nothing any more. */
export const strikeReading: Command<{ label: string; readingId: number; why: string }, { label: string }> = (
  book,
  by,
  input,
) =>
  writeEntry(book, { ...by, kind: STRUCK, request: input }, async (pen) => {
    const { label, readingId } = input;
    const why = input.why.trim();
    if (why === '') return err({ code: 'reason-needed', field: 'why' });
    const reading = await pen.tx.reading.findFirst({
      where: { id: readingId, piece: { stock: { label } } },
      select: {
        pieceId: true,
        mcTenths: true,
        takenOn: true,
        piece: { select: { stock: { select: struckSelect } } },
      },
    });
    if (!reading) return err({ code: 'not-found', facts: { label } });
    const isStruck = reading.piece.stock.entries.some(({ reference }) => reference === String(readingId));
    if (isStruck) return err({ code: 'reading-gone' });
    await pen.enter(
      {
        why: `${reading.mcTenths / 10} % on ${reading.takenOn}: ${why}`,
        reference: String(readingId),
        stockId: reading.pieceId,
      },
      { label },
    );
    return ok({ label });
  });
