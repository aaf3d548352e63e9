import type { PieceFlag } from '@/shared/wood/piece';

/** What a piece is marked with, in words that stand in a sentence or after a term. */
export const PIECE_FLAG_WORDS: Readonly<Record<PieceFlag, string>> = {
  broken: 'broken',
  strapped: 'strapped',
  checked: 'checked',
  twisted: 'twisted',
  'live-edge-left': 'live edge on the left',
  'live-edge-right': 'live edge on the right',
};
