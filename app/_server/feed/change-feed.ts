import { randomBytes } from 'node:crypto';
import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';

export type ChangeFeed = { to: 'new' | 'none' };

/**
 * Makes the calendar's address, makes it another, or ends it. The secret itself stands in no entry: it is 256 bits of
 * chance, kept in the book's title page alone, and the one before it is gone at once. Whether there was one is read under
 * the pen: a press that is sent twice is one press, whatever it changed the first time.
 */
export const changeFeed: Command<ChangeFeed, { had: boolean }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'feed-changed', request: input }, async (pen) => {
    const before = await pen.tx.book.findUnique({ where: { id: 1 }, select: { feedSecret: true } });
    const had = (before?.feedSecret ?? null) !== null;
    if (input.to === 'none' && !had) return err({ code: 'no-feed' });
    const feedSecret = input.to === 'none' ? null : randomBytes(32).toString('base64url');
    await pen.enter({ reference: input.to === 'none' ? 'ended' : had ? 'renewed' : 'made' }, { had });
    await pen.tx.book.update({ where: { id: 1 }, data: { feedSecret }, select: { id: true } });
    return ok({ had });
  });
