import { type FoundKind, searchWords } from '@/app/_server/find/search-words';
import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';

/** Ids by kind, in the order found. */
export type Found = Record<FoundKind, number[]> & { containers: number[] };

/** The character after every letter and digit: the end of a prefix's range on the index. */
const AFTER = '\u{10FFFF}';
const MOST = 60;

/**
 * Finds things whose words begin with every word of the query, as you type it: a range on the word index for the longest
 * word, the others checked on what it finds, until there are enough.
 */
export async function findThings(book: OpenBook, query: string): Promise<Found> {
  const found: Found = { product: [], lot: [], piece: [], place: [], job: [], containers: [] };
  const words = searchWords(query).slice(0, 6);
  const [longest, ...others] = [...words].sort((a, b) => b.length - a.length);
  if (!longest) return found;
  const kinds: FoundKind[] = ['product', 'lot', 'piece', 'place', 'job'];
  const label = query.replaceAll(/[\s-]/g, '').toUpperCase();
  const [labels, ...ids] = await Promise.all([
    /^C[0-9A-Z]{1,6}$/.test(label)
      ? book.read.stock.findMany({
          where: { label: { gte: label, lt: label + AFTER }, kind: 'container' },
          select: { id: true },
          take: MOST,
        })
      : [],
    ...kinds.map((kind) => idsOf(book, kind, longest, others)),
  ]);
  found.containers = labels.map((row) => row.id);
  for (const [nr, kind] of kinds.entries()) found[kind] = ids[nr] ?? [];
  return found;
}

/** Ids of one kind that have a word beginning with `first` and, for each of the others, a word beginning with it. */
async function idsOf(book: OpenBook, kind: FoundKind, first: string, others: string[]): Promise<number[]> {
  const also = others.map(
    (word) => Prisma.sql`AND EXISTS (SELECT 1 FROM "SearchWord" b WHERE b."kind" = a."kind" AND b."refId" = a."refId"
      AND b."word" >= ${word} AND b."word" < ${word + AFTER})`,
  );
  const rows = await book.read.$queryRaw<{ refId: number | bigint }[]>`
    SELECT DISTINCT a."refId" FROM "SearchWord" a
    WHERE a."kind" = ${kind} AND a."word" >= ${first} AND a."word" < ${first + AFTER}
    ${also.length ? Prisma.join(also, ' ') : Prisma.empty} LIMIT ${MOST}`;
  return rows.map((row) => Number(row.refId));
}
