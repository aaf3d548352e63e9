import type { Prisma } from '@/prisma/generated/client';

/** Of stocktakes those that go on: nothing closed them, or what closed them was reversed. */
export const openStocktake = {
  OR: [{ closedById: null }, { closedBy: { reversedBy: { isNot: null } } }],
} satisfies Prisma.StocktakeWhereInput;
