import type { Refusal } from '@/app/_server/refusal';
import type { WriteTransaction } from '@/prisma/open-book';

const WRITTEN: Readonly<Record<string, string>> = {
  'piece-measured': 'measured',
  'piece-marked': 'marked',
  'straps-cut': 'marked',
  'reading-taken': 'read',
};

/**
 * The first piece made by a cut that has moved on since: it went elsewhere, was promised, held, used or cut, or something
 * was written about it that a reversal would hide. What was reversed in the meantime does not count. Undefined for an
 * entry that made no pieces, and where all are as the cut left them.
 */
export async function movedOnSince(tx: WriteTransaction, entryId: number): Promise<Refusal | undefined> {
  const made = await tx.piece.findMany({
    where: { cutId: entryId },
    orderBy: { stockId: 'asc' },
    select: { stockId: true, stock: { select: { label: true } } },
  });
  for (const { stockId, stock } of made) {
    const because = (await movementSince(tx, stockId, entryId)) ?? (await writtenSince(tx, stockId, entryId));
    if (because) return { code: 'moved-on', facts: { label: stock.label, because } };
  }
  return undefined;
}

async function movementSince(tx: WriteTransaction, stockId: number, entryId: number): Promise<string | undefined> {
  const later = await tx.movement.findFirst({
    where: { stockId, entryId: { gt: entryId }, reversesId: null, reversedBy: null },
    orderBy: { id: 'asc' },
  });
  if (!later) return undefined;
  if (later.quantityDelta !== 0n) return 'gone';
  if (later.placeFromId !== later.placeToId) return 'moved';
  return later.jobFromId !== later.jobToId ? 'given' : 'held';
}

async function writtenSince(tx: WriteTransaction, stockId: number, entryId: number): Promise<string | undefined> {
  const later = await tx.entry.findFirst({
    where: {
      OR: [{ stockId }, { also: { some: { stockId } } }],
      id: { gt: entryId },
      reversesId: null,
      reversedBy: null,
    },
    orderBy: { id: 'asc' },
    select: { kind: true },
  });
  return later ? (WRITTEN[later.kind] ?? 'written') : undefined;
}
