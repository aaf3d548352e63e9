import type { ScannedContainer, ScannedPiece } from '@/app/_server/codes/what-was-scanned';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

/** What can be moved: a container or a piece of wood. */
export type Movable = ScannedContainer | ScannedPiece;

/** What a thing is called in a list: `C-4K7VMX, Deep-pour resin, part A`. */
export function nameOf(thing: Movable): string {
  const title = thing.kind === 'container' ? thing.product : `${thing.species}, ${thing.form}`;
  return `${printOwnLabel(thing.label)}, ${title}`;
}
