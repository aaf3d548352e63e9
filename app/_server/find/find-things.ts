import { readQuery } from '@/app/_server/find/read-query';
import { type FoundKind, searchWords, wholeWords } from '@/app/_server/find/search-words';
import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';

/** Ids by kind, in the order found. */
export type Found = Record<FoundKind, number[]> & {
  containers: number[];
  /** The words fit more things than were looked through: more letters find the rest. */
  cut: boolean;
};

/** The character after every letter and digit: the end of a prefix's range on the index. */
const AFTER = '\u{10FFFF}';
const MOST = 500;

/**
 * Finds things whose words begin with every word of the query, as you type it: a range on the word index for the longest
 * word, the others checked on what it finds, until there are enough. A lot is found by its code, beside words of its
 * product; by those alone its product is. An own label is found with its dash or without, and a code that was taught by
 * its beginning, as it is printed. Labels of what is used up are left out unless they are asked for.
 */
export async function findThings(
  book: OpenBook,
  query: string,
  { withEmpty = false }: { withEmpty?: boolean } = {},
): Promise<Found> {
  const found: Found = { product: [], lot: [], piece: [], place: [], job: [], containers: [], cut: false };
  const { words, label, codes } = readQuery(query);
  const asked = [...byWords(words), ...byLabel(label, withEmpty), ...byCode(codes)];
  if (asked.length === 0) return found;
  // All in one question: asked one by one, the asking took longer than the finding.
  const rows = await book.read.$queryRaw<{ kind: FoundKind | 'container'; refId: number | bigint }[]>`
    ${Prisma.join(asked, ' UNION ALL ')}`;
  const ids = {
    product: new Set<number>(),
    lot: new Set<number>(),
    piece: new Set<number>(),
    place: new Set<number>(),
    job: new Set<number>(),
    container: new Set<number>(),
  };
  for (const { kind, refId } of rows) ids[kind].add(Number(refId));
  for (const kind of KINDS) found[kind] = [...ids[kind]];
  found.containers = [...ids.container];
  found.cut = Object.values(ids).some((some) => some.size >= MOST);
  return found;
}

const KINDS: readonly FoundKind[] = ['product', 'lot', 'piece', 'place', 'job'];

function byWords(text: string): Prisma.Sql[] {
  const words = searchWords(text).slice(0, 6);
  const [longest, ...others] = [...words].sort((a, b) => b.length - a.length);
  if (!longest) return [];
  const kinds = KINDS.filter((kind) => kind !== 'lot');
  return [...kinds.map((kind) => idsOf(kind, longest, others)), lotIds(wholeWords(text).slice(0, 6))];
}

function byLabel(label: string | undefined, withEmpty: boolean): Prisma.Sql[] {
  if (label === undefined) return [];
  const begins = Prisma.sql`"label" >= ${label} AND "label" < ${label + AFTER}`;
  const ids = label.startsWith('P')
    ? Prisma.sql`SELECT 'place' AS "kind", "id" AS "refId" FROM "Place" WHERE ${begins}`
    : Prisma.sql`SELECT "kind", "id" AS "refId" FROM "Stock"
        WHERE ${begins} ${withEmpty ? Prisma.empty : Prisma.sql`AND "quantity" > 0`}`;
  return [firstFew(ids, 'labelled')];
}

function byCode(codes: string[]): Prisma.Sql[] {
  if (codes.length === 0) return [];
  const begin = codes.map((code) => Prisma.sql`(k."value" >= ${code} AND k."value" < ${code + AFTER})`);
  return [
    firstFew(
      Prisma.sql`SELECT CASE WHEN k."productId" IS NOT NULL THEN 'product' WHEN k."placeId" IS NOT NULL THEN 'place'
          ELSE s."kind" END AS "kind", COALESCE(k."productId", k."placeId", k."stockId") AS "refId"
        FROM "Code" k LEFT JOIN "Stock" s ON s."id" = k."stockId" WHERE ${Prisma.join(begin, ' OR ')}`,
      'coded',
    ),
  ];
}

/** Ids of one kind that have a word beginning with `first` and, for each of the others, a word beginning with it. */
function idsOf(kind: FoundKind, first: string, others: string[]): Prisma.Sql {
  const also = others.map((word) => Prisma.sql`AND ${hasWord(Prisma.sql`${kind}`, Prisma.sql`a."refId"`, word)}`);
  return firstFew(
    Prisma.sql`SELECT DISTINCT a."kind", a."refId" FROM "SearchWord" a
    WHERE a."kind" = ${kind} AND ${begins('a', first)} ${joined(also)}`,
    kind,
  );
}

/** Lots that have a word of their own beginning with one of these, and for each of the others one too, or their product has. */
function lotIds(words: string[]): Prisma.Sql {
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
  return firstFew(Prisma.sql`SELECT DISTINCT * FROM (${Prisma.join(ways, ' UNION ALL ')}) "any"`, 'lot');
}

const joined = (parts: Prisma.Sql[]) => (parts.length ? Prisma.join(parts, ' ') : Prisma.empty);

const firstFew = (ids: Prisma.Sql, name: string) =>
  Prisma.sql`SELECT * FROM (${ids} LIMIT ${MOST}) ${Prisma.raw(`"${name}"`)}`;

const begins = (table: 'a' | 'b', word: string) => {
  const column = Prisma.raw(`${table}."word"`);
  return Prisma.sql`${column} >= ${word} AND ${column} < ${word + AFTER}`;
};

const hasWord = (kind: Prisma.Sql, refId: Prisma.Sql, word: string) =>
  Prisma.sql`EXISTS (SELECT 1 FROM "SearchWord" b WHERE b."kind" = ${kind} AND b."refId" = ${refId} AND ${begins('b', word)})`;
