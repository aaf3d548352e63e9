import { Prisma } from '@/prisma/generated/client';
import type { PieceForm } from '@/shared/wood/piece';

/** What wood is narrowed to, beside a search. Lengths in nanometres. */
export type WoodFilter = {
  form?: PieceForm | undefined;
  species?: string | undefined;
  /** Neither promised to a job nor held. */
  freeOnly?: boolean;
  leastThicknessNm?: number | undefined;
  leastLengthNm?: number | undefined;
};

/** The filter as conditions on a piece `w` and its stock `s`. */
export function woodFilter(filter: WoodFilter | undefined): Prisma.Sql {
  if (!filter) return Prisma.empty;
  const { form, species, freeOnly, leastThicknessNm, leastLengthNm } = filter;
  return Prisma.sql`${form ? Prisma.sql`AND w."form" = ${form}` : Prisma.empty}
    ${species ? Prisma.sql`AND w."species" = ${species}` : Prisma.empty}
    ${freeOnly ? Prisma.sql`AND s."hold" = 'free' AND s."ownerJobId" IS NULL` : Prisma.empty}
    ${leastThicknessNm ? Prisma.sql`AND w."thicknessNm" >= ${BigInt(leastThicknessNm)}` : Prisma.empty}
    ${leastLengthNm ? Prisma.sql`AND w."lengthNm" >= ${BigInt(leastLengthNm)}` : Prisma.empty}`;
}
