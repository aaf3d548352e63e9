/** The three verdicts. Each is told apart by its shape and its word, never by colour alone. */
export type VerdictWord = 'use' | 'care' | 'stop';

export const VERDICT_WORDS: Record<VerdictWord, string> = { use: 'Use', care: 'Care', stop: 'Stop' };
