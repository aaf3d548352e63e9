import { Prisma } from '@/prisma/generated/client';

/** The character after every letter and digit: the end of a prefix's range on the index. */
export const AFTER = '\u{10FFFF}';
/** As many ids of a kind as are passed on to what lists them. */
export const MOST = 500;

export const joined = (parts: Prisma.Sql[]) => (parts.length ? Prisma.join(parts, ' ') : Prisma.empty);

/** The first of some ids, as a part of a question that asks for several kinds. */
export const firstFew = (ids: Prisma.Sql, name: string) =>
  Prisma.sql`SELECT * FROM (${ids} LIMIT ${MOST}) ${Prisma.raw(`"${name}"`)}`;

/** That a row of the word index has a word beginning with this. */
export const begins = (table: 'a' | 'b', word: string) => {
  const column = Prisma.raw(`${table}."word"`);
  return Prisma.sql`${column} >= ${word} AND ${column} < ${word + AFTER}`;
};

/** That a thing has a word beginning with this. */
export const hasWord = (kind: Prisma.Sql, refId: Prisma.Sql, word: string) =>
  Prisma.sql`EXISTS (SELECT 1 FROM "SearchWord" b WHERE b."kind" = ${kind} AND b."refId" = ${refId} AND ${begins('b', word)})`;
