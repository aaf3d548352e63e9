import { begins, firstFew, hasWord, joined, MOST } from '@/app/_server/find/word-range';
import { Prisma } from '@/prisma/generated/client';

/** Most lots of an old book are used up, and every one has to be looked at: this many take a few milliseconds. */
const MOST_SEEN = 1_000;

/**
 * Lots that have a word of their own beginning with one of these, and for each of the others one too, or their product
 * has. `left`: of the first 1,000 those with something left, and a row without an id where that was not all of them.
 */
export function lotsByWords(words: string[], of: 'any' | 'left'): Prisma.Sql {
  // Half of all lots have a word that begins with one certain letter: beside others it says too little to begin with.
  const telling = words.filter((word) => word.length > 1 || words.length === 1);
  const ways = (telling.length ? telling : words.slice(0, 1)).map((own) => {
    const also = words
      .filter((word) => word !== own)
      .map(
        (word) => Prisma.sql`AND (l."productId" IN
            (SELECT b."refId" FROM "SearchWord" b WHERE b."kind" = 'product' AND ${begins('b', word)})
          OR ${hasWord(Prisma.sql`'lot'`, Prisma.sql`a."refId"`, word)})`,
      );
    // A word that nothing begins with is asked for once, not once for every lot.
    const known = words
      .filter((word) => word !== own)
      .map(
        (word) => Prisma.sql`AND EXISTS
        (SELECT 1 FROM "SearchWord" b WHERE b."kind" IN ('lot', 'product') AND ${begins('b', word)})`,
      );
    const lot = also.length ? Prisma.sql`JOIN "Lot" l ON l."stockId" = a."refId"` : Prisma.empty;
    return Prisma.sql`SELECT a."kind", a."refId" FROM "SearchWord" a ${lot}
      WHERE a."kind" = 'lot' AND ${begins('a', own)} ${joined([...known, ...also])}`;
  });
  const lots = Prisma.sql`SELECT DISTINCT * FROM (${Prisma.join(ways, ' UNION ALL ')}) "any"`;
  if (of === 'any') return firstFew(lots, 'lot');
  return Prisma.sql`SELECT * FROM (WITH seen AS MATERIALIZED (${lots} LIMIT ${MOST_SEEN})
    SELECT * FROM (SELECT "kind", "refId" FROM seen WHERE EXISTS (SELECT 1 FROM "Container" c JOIN "Stock" s
      ON s."id" = c."stockId" WHERE c."lotId" = seen."refId" AND s."quantity" > 0) LIMIT ${MOST}) "left"
    UNION ALL SELECT 'lot', NULL WHERE (SELECT COUNT(*) FROM seen) = ${MOST_SEEN}) "lot"`;
}
