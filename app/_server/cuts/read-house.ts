import type { OpenBook } from '@/prisma/open-book';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';

/** What this workshop calls too small to keep, and what its saw takes. */
export type House = { lengthNm: Nanometres; widthNm: Nanometres; kerfNm: Nanometres };

export async function readHouse(book: OpenBook): Promise<House> {
  const { houseLengthNm, houseWidthNm, kerfNm } = await book.read.book.findUniqueOrThrow({
    where: { id: 1 },
    select: { houseLengthNm: true, houseWidthNm: true, kerfNm: true },
  });
  return { lengthNm: nanometres(houseLengthNm), widthNm: nanometres(houseWidthNm), kerfNm: nanometres(kerfNm) };
}
