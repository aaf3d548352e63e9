import { randomUUID } from 'node:crypto';
import { sayStoreTrouble, storeTroubleOf } from '@/prisma/store-trouble';
import type { Problem } from '@/shared/result/answer';

/**
 * An error nobody expected, in words for people: trouble of the store as what it is, anything else under a reference that
 * the server's log has too. Its own text may show paths of the server and is never shown.
 */
export function problemOfError(error: unknown): Problem {
  const reference = randomUUID().slice(0, 8);
  console.error(`[${reference}]`, error);
  const trouble = storeTroubleOf(error);
  return {
    code: trouble,
    what: trouble === 'unknown' ? 'Something went wrong that this program did not expect.' : sayStoreTrouble(error),
    kept: 'Nothing was written. What you entered is still here.',
    todo:
      trouble === 'unknown'
        ? `Try again; if it stays, the server's log has it under ${reference}.`
        : `Then try again. The server's log has it under ${reference}.`,
  };
}
