import type { FitsView } from '@/app/(shop)/on-hand/fits/fits-view';
import type { Problem } from '@/shared/result/answer';

/** One line of the answer that is sent as it is worked out. */
export type FitsLine =
  | { readonly done: number; readonly of: number }
  | { readonly view: FitsView }
  | { readonly problem: Problem };
