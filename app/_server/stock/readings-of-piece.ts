import { pieceSelect, type ReadingLine, readingLine } from '@/app/_server/stock/load-piece';
import { STRIKES } from '@/app/_server/stock/struck-readings';
import type { OpenBook } from '@/prisma/open-book';

/** A reading as the table of the piece shows it. */
export type KeptReading = ReadingLine & {
  id: number;
  /** Why it was struck out, as the history has it; null where it counts. */
  struck: string | null;
};

/** Every reading of a piece, also those struck out; the newest day first, of a day the one written last. */
export async function readingsOfPiece(book: OpenBook, stockId: number): Promise<KeptReading[]> {
  const [rows, entries] = await Promise.all([
    book.read.reading.findMany({
      where: { pieceId: stockId },
      select: pieceSelect.readings.select,
      orderBy: [{ takenOn: 'desc' }, { id: 'desc' }],
    }),
    book.read.entry.findMany({ where: { stockId, ...STRIKES }, select: { reference: true, why: true } }),
  ]);
  const why = new Map(entries.map((entry) => [entry.reference, entry.why]));
  return rows.map((row) => ({ ...readingLine(row), id: row.id, struck: why.get(String(row.id)) ?? null }));
}
