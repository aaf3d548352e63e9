import type { ReasonCode } from '@/shared/shelf-life/types/reason';

const HELD: readonly ReasonCode[] = ['recalled', 'quarantine', 'on-hold'];

/** Why a Stop can be overridden by nobody here, in a sentence; and whether it is a hold, to be released on its page. */
export function sayNever(because: readonly ReasonCode[]): { words: string; held: boolean } {
  const spoilt = because.filter((code) => !HELD.includes(code));
  if (spoilt.length === 0) {
    return {
      words: 'A hold is released first, on its page, by a decision with its reason. It cannot be used around.',
      held: true,
    };
  }
  if (spoilt.includes('wrong-system')) {
    return { words: 'Parts of different systems do not cure, now or later. No reason makes them.', held: false };
  }
  if (spoilt.includes('empty')) return { words: 'The book says there is nothing left in it to take.', held: false };
  return {
    words: 'What has gelled, skinned through or frozen does not come back. No reason makes it usable.',
    held: false,
  };
}
