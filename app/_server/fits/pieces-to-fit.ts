import { type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';

/** So many pieces are looked at for one question. */
export const MOST_PIECES = 400;

/**
 * The slabs, boards and offcuts in stock that a top could be cut from, the largest first, at most 400; `total` is how
 * many there are. With `freeOnly` those promised to a job or held are left out. Sheets are looked at where the kind asked for
 * by name comes in nothing else: nobody wants a top of solid wood and gets plywood.
 */
export async function piecesToFit(
  book: OpenBook,
  asked: { species?: string | undefined; freeOnly: boolean; most?: number },
): Promise<{ pieces: PieceLine[]; total: number }> {
  const solid = await piecesOf(book, Prisma.sql`'slab', 'board', 'offcut'`, asked);
  return asked.species === undefined || solid.total > 0 ? solid : piecesOf(book, Prisma.sql`'sheet'`, asked);
}

async function piecesOf(
  book: OpenBook,
  forms: Prisma.Sql,
  { species, freeOnly, most = MOST_PIECES }: { species?: string | undefined; freeOnly: boolean; most?: number },
): Promise<{ pieces: PieceLine[]; total: number }> {
  const wanted = Prisma.sql`"Piece" w JOIN "Stock" s ON s."id" = w."stockId"
    WHERE w."form" IN (${forms}) AND s."quantity" > 0
    ${species === undefined ? Prisma.empty : Prisma.sql`AND w."species" = ${species}`}
    ${freeOnly ? Prisma.sql`AND s."hold" = 'free' AND s."ownerJobId" IS NULL` : Prisma.empty}`;
  // In square millimetres: in square nanometres the product leaves the range of an integer.
  const ids = await book.read.$queryRaw<{ id: number }[]>`
    SELECT w."stockId" AS "id" FROM ${wanted}
    ORDER BY (w."lengthNm" / 1000000) * (w."widthMiddleNm" / 1000000) DESC, w."stockId" LIMIT ${most + 1}`;
  const page = ids.slice(0, most).map((row) => row.id);
  if (page.length === 0) return { pieces: [], total: 0 };
  const rows = await book.read.piece.findMany({ where: { stockId: { in: page } }, select: pieceSelect });
  const byId = new Map(rows.map((row) => [row.stockId, pieceLine(row)]));
  const pieces = page.flatMap((id) => byId.get(id) ?? []);
  if (ids.length <= most) return { pieces, total: pieces.length };
  const [count] = await book.read.$queryRaw<{ total: number | bigint }[]>`SELECT COUNT(*) AS "total" FROM ${wanted}`;
  return { pieces, total: Number(count?.total ?? pieces.length) };
}
