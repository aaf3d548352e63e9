import type { OpenBook } from '@/prisma/open-book';

/** Every species the book has had, in order of name, for suggestions. At most 200. */
export async function listSpecies(book: OpenBook): Promise<string[]> {
  const rows = await book.read.piece.findMany({
    distinct: ['species'],
    orderBy: { species: 'asc' },
    select: { species: true },
    take: 200,
  });
  return rows.map((row) => row.species);
}
