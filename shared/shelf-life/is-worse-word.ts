import type { VerdictWord } from '@/shared/shelf-life/types/verdict';

const WORSE: Record<VerdictWord, number> = { use: 0, care: 1, stop: 2 };

/** Orders words from good to bad, for sorting: negative when `one` is the better, 0 for two alike. */
export const compareWords = (one: VerdictWord, other: VerdictWord): number => WORSE[one] - WORSE[other];

/** Whether a verdict's word is worse than another's: `stop` than `care`, `care` than `use`; of two alike, no. */
export const isWorseWord = (one: VerdictWord, other: VerdictWord): boolean => compareWords(one, other) > 0;
