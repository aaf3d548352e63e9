import type { OwnLabelKind } from '@/shared/scan-codes/own-label';
import type { PieceForm } from '@/shared/wood/piece';

/** What its label says a piece is: a pack of boards wears a board's. */
export function labelKindOf(form: PieceForm): OwnLabelKind & ('slab' | 'board' | 'sheet' | 'offcut') {
  return form === 'pack' ? 'board' : form;
}
