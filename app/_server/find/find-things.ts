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
  await Promise.all([
    addByWords(book, words, found),
    addByLabel(book, label, withEmpty, found),
    addByCode(book, codes, found),
  ]);
  return found;
}

async function addByWords(book: OpenBook, text: string, found: Found): Promise<void> {
  const words = searchWords(text).slice(0, 6);
  const [longest, ...others] = [...words].sort((a, b) => b.length - a.length);
  if (!longest) return;
  const kinds: FoundKind[] = ['product', 'piece', 'place', 'job'];
  // All kinds in one question: asked one by one, the asking took longer than the finding.
  const asked = [...kinds.map((kind) => idsOf(kind, longest, others)), lotIds(wholeWords(text).slice(0, 6))];
  const rows = await book.read.$queryRaw<{ kind: FoundKind; refId: number }[]>`${Prisma.join(asked, ' UNION ALL ')}`;
  for (const kind of [...kinds, 'lot' as const]) {
    const ids = rows.flatMap((row) => (row.kind === kind ? row.refId : []));
    found[kind] = withThese(ids, found[kind]);
    found.cut ||= ids.length >= MOST;
  }
}

type CodeRow = { productId: number | null; placeId: number | null; stockId: number | null; kind: string | null };

async function addByLabel(book: OpenBook, label: string | undefined, withEmpty: boolean, found: Found): Promise<void> {
  if (label === undefined) return;
  const range = { gte: label, lt: label + AFTER };
  if (label.startsWith('P')) {
    const places = await book.read.place.findMany({ where: { label: range }, select: { id: true }, take: MOST });
    found.place = withThese(
      found.place,
      places.map((row) => row.id),
    );
    return;
  }
  const rows = await book.read.stock.findMany({
    where: { label: range, ...(withEmpty ? {} : { quantity: { gt: 0 } }) },
    select: { id: true, kind: true },
    take: MOST,
  });
  found.cut ||= rows.length >= MOST;
  found.containers = withThese(
    found.containers,
    rows.filter((row) => row.kind === 'container').map((row) => row.id),
  );
  found.piece = withThese(
    found.piece,
    rows.filter((row) => row.kind === 'piece').map((row) => row.id),
  );
}

async function addByCode(book: OpenBook, codes: string[], found: Found): Promise<void> {
  if (codes.length === 0) return;
  const begins = codes.map((code) => Prisma.sql`(k."value" >= ${code} AND k."value" < ${code + AFTER})`);
  const rows = await book.read.$queryRaw<CodeRow[]>`
    SELECT k."productId", k."placeId", k."stockId", s."kind" FROM "Code" k LEFT JOIN "Stock" s ON s."id" = k."stockId"
    WHERE ${Prisma.join(begins, ' OR ')} LIMIT ${MOST}`;
  found.product = withThese(
    found.product,
    rows.flatMap((row) => row.productId ?? []),
  );
  found.place = withThese(
    found.place,
    rows.flatMap((row) => row.placeId ?? []),
  );
  for (const kind of ['container', 'piece'] as const) {
    const key = kind === 'container' ? 'containers' : 'piece';
    found[key] = withThese(
      found[key],
      rows.flatMap((row) => (row.kind === kind ? (row.stockId ?? []) : [])),
    );
  }
}

const withThese = (some: number[], more: number[]) => [...new Set([...some, ...more])];

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

const firstFew = (ids: Prisma.Sql, name: FoundKind) =>
  Prisma.sql`SELECT * FROM (${ids} LIMIT ${MOST}) ${Prisma.raw(`"${name}"`)}`;

const begins = (table: 'a' | 'b', word: string) => {
  const column = Prisma.raw(`${table}."word"`);
  return Prisma.sql`${column} >= ${word} AND ${column} < ${word + AFTER}`;
};

const hasWord = (kind: Prisma.Sql, refId: Prisma.Sql, word: string) =>
  Prisma.sql`EXISTS (SELECT 1 FROM "SearchWord" b WHERE b."kind" = ${kind} AND b."refId" = ${refId} AND ${begins('b', word)})`;
