import { readQuery } from '@/app/_server/find/read-query';
import { type FoundKind, searchWords } from '@/app/_server/find/search-words';
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
 * word, the others checked on what it finds, until there are enough. An own label is found with its dash or without, and
 * a code that was taught by its beginning, as it is printed.
 */
export async function findThings(book: OpenBook, query: string): Promise<Found> {
  const found: Found = { product: [], lot: [], piece: [], place: [], job: [], containers: [], cut: false };
  const { words, label, codes } = readQuery(query);
  await Promise.all([addByWords(book, words, found), addByLabel(book, label, found), addByCode(book, codes, found)]);
  return found;
}

async function addByWords(book: OpenBook, text: string, found: Found): Promise<void> {
  const words = searchWords(text).slice(0, 6);
  const [longest, ...others] = [...words].sort((a, b) => b.length - a.length);
  if (!longest) return;
  const kinds: FoundKind[] = ['product', 'lot', 'piece', 'place', 'job'];
  // All kinds in one question: asked one by one, the asking took longer than the finding.
  const rows = await book.read.$queryRaw<{ kind: FoundKind; refId: number }[]>`
    ${Prisma.join(
      kinds.map((kind) => idsOf(kind, longest, others)),
      ' UNION ALL ',
    )}`;
  for (const kind of kinds) {
    const ids = rows.flatMap((row) => (row.kind === kind ? row.refId : []));
    found[kind] = withThese(ids, found[kind]);
    found.cut ||= ids.length >= MOST;
  }
}

type CodeRow = { productId: number | null; placeId: number | null; stockId: number | null; kind: string | null };

async function addByLabel(book: OpenBook, label: string | undefined, found: Found): Promise<void> {
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
    where: { label: range },
    select: { id: true, kind: true },
    take: MOST,
  });
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
  const also = others.map(
    (word) => Prisma.sql`AND EXISTS (SELECT 1 FROM "SearchWord" b WHERE b."kind" = a."kind" AND b."refId" = a."refId"
      AND b."word" >= ${word} AND b."word" < ${word + AFTER})`,
  );
  return Prisma.sql`SELECT * FROM (SELECT DISTINCT a."kind", a."refId" FROM "SearchWord" a
    WHERE a."kind" = ${kind} AND a."word" >= ${first} AND a."word" < ${first + AFTER}
    ${also.length ? Prisma.join(also, ' ') : Prisma.empty} LIMIT ${MOST}) ${Prisma.raw(`"${kind}"`)}`;
}
