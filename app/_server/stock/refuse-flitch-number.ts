import type { Refusal } from '@/app/_server/refusal';
import type { WriteTransaction } from '@/prisma/open-book';

/** Numbers of a flitch that pieces are to have: `first` and as many on from it as there are pieces. */
export type FlitchNumbers = {
  form: string;
  species: string;
  flitch: string;
  first: number | undefined;
  count: number;
  /** The piece that is to have it, where that is in the book. */
  stockId?: number;
};

/**
 * A number that another piece of the same flitch has. One that was used keeps its number; one whose arrival was reversed
 * never came, and gives it back. What was cut from a slab has the slab's number, as all its pieces have.
 */
export async function refuseFlitchNumber(tx: WriteTransaction, wanted: FlitchNumbers): Promise<Refusal | undefined> {
  const { form, species, flitch, first, count, stockId } = wanted;
  if (flitch === '' || first === undefined) return undefined;
  const other = await tx.piece.findFirst({
    where: {
      form,
      species,
      flitch,
      flitchNumber: { gte: first, lt: first + count },
      cutId: null,
      ...(stockId !== undefined && { NOT: { stockId: { in: await lineOf(tx, stockId) } } }),
      stock: {
        OR: [
          { quantity: { gt: 0 } },
          { movements: { some: { quantityDelta: { gt: 0 }, reversesId: null, reversedBy: null } } },
        ],
      },
    },
    orderBy: { flitchNumber: 'asc' },
    select: { flitchNumber: true, stock: { select: { label: true } } },
  });
  if (!other) return undefined;
  return {
    code: 'flitch-number-taken',
    field: 'flitchNumber',
    facts: { number: other.flitchNumber, flitch, label: other.stock.label },
  };
}

/** A piece, and those it was cut from one after the other. */
async function lineOf(tx: WriteTransaction, stockId: number): Promise<number[]> {
  const line: number[] = [];
  for (let at: number | undefined = stockId; at !== undefined; ) {
    line.push(at);
    const row: { cutFrom: { pieceId: number } | null } | null = await tx.piece.findUnique({
      where: { stockId: at },
      select: { cutFrom: { select: { pieceId: true } } },
    });
    at = row?.cutFrom?.pieceId;
  }
  return line;
}
