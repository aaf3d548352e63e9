import type { PrismaClient } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';
import { WAIT_MS } from '@/prisma/wait-ms';

/**
 * A book over the two clients it is open through. `isolationLevel`: what a snapshot asks of a store whose transactions do
 * not read one state throughout by themselves.
 */
export function bookOver(read: PrismaClient, writer: PrismaClient, isolationLevel?: 'RepeatableRead'): OpenBook {
  // The types are SQLite's, which knows one level and needs none.
  const snapshotHow = isolationLevel && { isolationLevel: isolationLevel as never };
  return {
    read,
    snapshot: (work, { timeout }) => read.$transaction(work, { maxWait: WAIT_MS, timeout, ...snapshotHow }),
    write: (work, how) => writer.$transaction(work, { maxWait: WAIT_MS, timeout: how?.timeout ?? WAIT_MS }),
    close: async () => {
      await read.$disconnect();
      await writer.$disconnect();
    },
  };
}
