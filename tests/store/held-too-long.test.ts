import { afterAll, describe, expect, it } from 'vitest';
import { sayStoreTrouble, storeTroubleOf } from '@/prisma/store-trouble';
import { freshBook } from '@/tests/support/test-book';

const troubleOf = (work: Promise<unknown>) =>
  work.then(
    () => undefined,
    (error: unknown) => error,
  );

describe('a write that takes too long', async () => {
  const test = await freshBook();
  afterAll(test.remove);
  const slow = (ms: number, timeout: number) =>
    test.book.write(
      async (tx) => {
        await new Promise((resolve) => setTimeout(resolve, ms));
        return tx.book.update({ where: { id: 1 }, data: { name: 'Other' }, select: { id: true } });
      },
      { timeout },
    );

  it('is told apart from one that waits for the pen, and writes nothing', async () => {
    const error = await troubleOf(slow(400, 100));
    expect(storeTroubleOf(error)).toBe('took-too-long');
    expect(sayStoreTrouble(error)).toMatch(
      /^That took longer than the book may be held for one act\. Nothing was half-/,
    );
    expect(await test.book.read.book.findUnique({ where: { id: 1 } })).toMatchObject({ name: 'Test shop' });
    expect(storeTroubleOf(new Error('P2028: Unable to start a transaction in the given time.'))).toBe('locked');
  });

  it('may be given the time it needs', async () => {
    await slow(400, 5_000);
    expect(await test.book.read.book.findUnique({ where: { id: 1 } })).toMatchObject({ name: 'Other' });
  });
});
