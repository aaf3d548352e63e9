import type { PieceFlag } from '@/shared/wood/piece';

const FLAGS: Readonly<Record<string, PieceFlag>> = {
  strap: 'strapped',
  'end-check': 'checked',
  check: 'checked',
  split: 'checked',
  break: 'broken',
};

/** What is drawn on a piece is also said of it, in lists that do not draw: the words its kinds of mark stand for. */
export function flagsOfMarks(kinds: readonly string[]): PieceFlag[] {
  return [...new Set(kinds.flatMap((kind) => FLAGS[kind] ?? []))];
}
