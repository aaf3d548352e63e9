import { STANDS } from '@/app/_server/timeline/standing';
import type { Prisma } from '@/prisma/generated/client';

/** Steps that stand, of jobs that are open, and are not done yet. */
export const undoneStep = {
  job: { state: 'open' },
  AND: [
    STANDS,
    { OR: [{ doneById: null }, { doneBy: { reversedBy: { isNot: null } } }] },
    { OR: [{ pourId: null }, { pour: STANDS }] },
  ],
} satisfies Prisma.StepWhereInput;
