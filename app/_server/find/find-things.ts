import { lotsByWords } from '@/app/_server/find/lots-by-words';
import { readQuery } from '@/app/_server/find/read-query';
import { type FoundKind, searchWords, wholeWords } from '@/app/_server/find/search-words';
import { AFTER, begins, firstFew, hasWord, joined, MOST } from '@/app/_server/find/word-range';
import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';

/** Ids by kind, in the order found. */
export type Found = Record<FoundKind, number[]> & {
  containers: number[];
  /** Of what the search fits more than was looked through: more letters find the rest. */
  cut: ReadonlySet<FoundKind | 'container'>;
};

/**
 * Finds things whose words begin with every word of the query, as you type it: a range on the word index for the longest
 * word, the others checked on what it finds, until there are enough. A lot is found by its code, beside words of its
 * product; by those alone its product is. An own label is found with its dash or without, and a code that was taught by
 * its beginning, as it is printed. Labels, wood and lots of which nothing is left are left out before the rest is cut to
 * 500, unless they are asked for.
 */
export async function findThings(
  book: OpenBook,
  query: string,
  { withEmpty = false }: { withEmpty?: boolean } = {},
): Promise<Found> {
  const found: Found = { product: [], lot: [], piece: [], place: [], job: [], containers: [], cut: new Set() };
  const { words, label, codes } = readQuery(query);
  const asked = [...byWords(words, withEmpty), ...byLabel(label, withEmpty), ...byCode(codes)];
  if (asked.length === 0) return found;
  const rows = await rowsOf(book, asked);
  const ids = {
    product: new Set<number>(),
    lot: new Set<number>(),
    piece: new Set<number>(),
    place: new Set<number>(),
    job: new Set<number>(),
    container: new Set<number>(),
  };
  const cut = new Set<FoundKind | 'container'>();
  const take = (each: Row[]) => {
    for (const { kind, refId } of each) refId === null ? cut.add(kind) : ids[kind].add(Number(refId));
  };
  take(rows);
  if (ids.lot.size >= MOST && !withEmpty) {
    // Most of them may be used up, which is only worth looking at where there are too many.
    ids.lot.clear();
    take(await rowsOf(book, [lotsByWords(wordsOfLots(words), 'left'), ...byCode(codes)]));
  }
  for (const kind of KINDS) found[kind] = [...ids[kind]];
  found.containers = [...ids.container];
  for (const kind of [...KINDS, 'container' as const]) if (ids[kind].size >= MOST) cut.add(kind);
  found.cut = cut;
  return found;
}

type Row = { kind: FoundKind | 'container'; refId: number | bigint | null };

/** All in one question: asked one by one, the asking took longer than the finding. */
function rowsOf(book: OpenBook, asked: Prisma.Sql[]): Promise<Row[]> {
  return book.read.$queryRaw<Row[]>`${Prisma.join(asked, ' UNION ALL ')}`;
}

const wordsOfLots = (text: string) => wholeWords(text).slice(0, 6);

const KINDS: readonly FoundKind[] = ['product', 'lot', 'piece', 'place', 'job'];

function byWords(text: string, withEmpty: boolean): Prisma.Sql[] {
  const words = searchWords(text).slice(0, 6);
  const [longest, ...others] = [...words].sort((a, b) => b.length - a.length);
  if (!longest) return [];
  const kinds = KINDS.filter((kind) => kind !== 'lot');
  return [
    ...kinds.map((kind) => idsOf(kind, longest, others, kind === 'piece' && !withEmpty ? IS_LEFT : Prisma.empty)),
    lotsByWords(wordsOfLots(text), 'any'),
  ];
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

const IS_LEFT = Prisma.sql`AND EXISTS (SELECT 1 FROM "Stock" s WHERE s."id" = a."refId" AND s."quantity" > 0)`;

/** Ids of one kind that have a word beginning with `first` and, for each of the others, a word beginning with it. */
function idsOf(kind: FoundKind, first: string, others: string[], left: Prisma.Sql): Prisma.Sql {
  const also = others.map((word) => Prisma.sql`AND ${hasWord(Prisma.sql`${kind}`, Prisma.sql`a."refId"`, word)}`);
  return firstFew(
    Prisma.sql`SELECT DISTINCT a."kind", a."refId" FROM "SearchWord" a
    WHERE a."kind" = ${kind} AND ${begins('a', first)} ${joined(also)} ${left}`,
    kind,
  );
}
