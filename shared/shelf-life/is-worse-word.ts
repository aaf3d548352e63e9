import type { VerdictWord } from '@/shared/shelf-life/types/verdict';

const WORSE: Record<VerdictWord, number> = { use: 0, care: 1, stop: 2 };

/** Whether a verdict's word is worse than another's: `stop` than `care`, `care` than `use`; of two alike, no. */
export const isWorseWord = (one: VerdictWord, other: VerdictWord): boolean => WORSE[one] > WORSE[other];
