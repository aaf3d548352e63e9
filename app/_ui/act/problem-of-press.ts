import { freshKey } from '@/app/_ui/act/fresh-key';
import type { Problem } from '@/shared/result/answer';

const NOT_IN_THE_BOOK: Problem = {
  code: 'no-network',
  what: 'The book could not be reached: this is not yet in the book.',
  kept: 'What you entered is still here, on this device.',
  todo: 'Come back into Wi-Fi and press again. Pressing twice writes it once.',
};

/**
 * Why a press had no answer. The network is blamed only where the request itself failed (Fetch Standard, 5.6: a network
 * error is a TypeError) or the device knows that it is offline; a server that answered with something else is said to
 * have done so, under a reference. Next gives an error of the server the `digest` its log has it under.
 */
export function problemOfPress(error: unknown, online: boolean): Problem {
  if (!online || error instanceof TypeError) return NOT_IN_THE_BOOK;
  const digest = typeof error === 'object' && error !== null && 'digest' in error ? String(error.digest) : '';
  const reference = digest || freshKey().slice(0, 8);
  console.error(`[${reference}]`, error);
  return {
    code: 'no-proper-answer',
    what: 'The server did not answer properly: it is not known whether this is in the book.',
    kept: 'What you entered is still here.',
    todo: `Press again: pressing twice writes it once. If it stays, load the page again; the reference is ${reference}.`,
  };
}

const OPEN_CODES = ['no-network', 'no-proper-answer', 'unknown', 'key-used-for-something-else'];

/** The problems that leave open whether a press was written: pressed again it must go under the same key. */
export function mayBeWritten(problem: Problem): boolean {
  return OPEN_CODES.includes(problem.code);
}
