import { createHash } from 'node:crypto';
import type { Command } from '@/app/_server/act';
import { err, ok } from '@/shared/result/result';

export type SetUp = {
  name: string;
  timeZone: string;
  units: 'metric' | 'imperial';
  currency: string;
  /** A made-up workshop to look at. */
  demo?: boolean;
};

/** What a shop that works in inches begins with: a foot, four inches, and a kerf of an eighth. */
const IN_INCHES = {
  dateOrder: 'month-first',
  houseLengthNm: 304_800_000n,
  houseWidthNm: 101_600_000n,
  kerfNm: 3_175_000n,
};

/** Begins an empty book. Refused when there is one already. */
export const setUpBook: Command<SetUp, { name: string }> = (book, by, input) =>
  book.write(async (tx) => {
    const answer = { name: input.name };
    const request = by.sent ?? createHash('sha256').update(JSON.stringify(input)).digest('hex');
    if (await tx.book.findUnique({ where: { id: 1 }, select: { id: true } })) {
      const begun = await tx.entry.findUnique({ where: { key: by.key }, select: { id: true, request: true } });
      // The same press again, after an answer that got lost.
      if (begun?.id === 1 && begun.request === request) return ok({ answer, replayed: true });
      return err({ code: 'book-already-there' });
    }
    await tx.book.create({
      data: {
        id: 1,
        ...input,
        ...(input.units === 'imperial' ? IN_INCHES : { dateOrder: 'day-first' }),
        revision: 1,
        createdAt: by.now,
      },
    });
    await tx.entry.create({
      data: {
        id: 1,
        key: by.key,
        request,
        kind: 'book-begun',
        happenedAt: by.now,
        writtenAt: by.now,
        who: by.who.who,
        device: by.who.device,
        answer: JSON.stringify(answer),
      },
    });
    return ok({ answer, replayed: false });
  });
