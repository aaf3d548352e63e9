import type { SearchAnswer } from '@/app/_server/fits/search-task';

/** What the thread of the search says to one task. */
export type ThreadReply =
  | { readonly id: number; readonly answer: SearchAnswer }
  | { readonly id: number; readonly failed: string };
