import type { FitAnswer } from '@/shared/fit/fit-answer';
import { fitOnePiece } from '@/shared/fit/fit-one-piece';
import type { ReadRequest, SlabToSearch } from '@/shared/fit/fit-request';

export type SlabAnswer = { readonly id: string; readonly fit: FitAnswer; readonly done: number; readonly of: number };

/**
 * Asks slab after slab, in the order given, handing out each answer as it comes with how many are done. The one who asks
 * shows progress from it and stops by asking no further; nothing is held in between. `[...fitSlabs(slabs, request)]`
 * asks them all.
 */
export function* fitSlabs(slabs: readonly SlabToSearch[], request: ReadRequest): Generator<SlabAnswer, void, void> {
  for (const [nr, slab] of slabs.entries()) {
    yield { id: slab.id, fit: fitOnePiece(slab, request), done: nr + 1, of: slabs.length };
  }
}
