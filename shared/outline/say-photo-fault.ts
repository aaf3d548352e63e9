import type { PhotoFault } from '@/shared/outline/outline-from-photo';
import { sayOutlineFault } from '@/shared/outline/say-outline-fault';

/** What is wrong with what was tapped on a photo, and what to do about it. Every code of `outlineFromPhoto` has its words. */
export function sayPhotoFault(code: PhotoFault['code']): { readonly says: string; readonly toDo: string } {
  switch (code) {
    case 'bow-tie':
      return { says: 'These marks are crossed.', toDo: 'Go round in order: move the marked one to its own corner.' };
    case 'corners-in-line':
    case 'marks-in-line':
      return { says: 'Three of these marks lie in one line.', toDo: 'Move the marked one to its own corner.' };
    case 'corner-dented':
      return { says: 'The marked corner points inward, as no sheet does.', toDo: 'Move it out to its own corner.' };
    case 'bad-size':
      return { says: 'These sizes do not fit.', toDo: 'Give sizes above zero; tapes cross between their two ends.' };
    case 'beyond-horizon':
      return {
        says: 'By these marks this point lies beyond the horizon.',
        toDo: 'Check the marks, or move the point.',
      };
    default:
      return sayOutlineFault(code);
  }
}
