import type { Watch } from '@/app/_server/watch/read-watch';

const counted = (count: number, one: string, many: string) =>
  count === 0 ? [] : [`${count.toLocaleString('en')} ${count === 1 ? one : many}`];

/** What needs attention in one sentence: `3 to use first, 2 past their day, 1 on hold.` Counts containers, and held wood. */
export function sayWatch({ lists, heldPieceCount }: Pick<Watch, 'lists' | 'heldPieceCount'>): string {
  const of = (list: keyof Watch['lists']) => lists[list].containers;
  const parts = [
    ...counted(of('expiring'), 'to use first', 'to use first'),
    ...counted(of('expired'), 'past its day', 'past their day'),
    ...counted(of('spoilt'), 'spoilt', 'spoilt'),
    ...counted(of('on-hold'), 'on hold', 'on hold'),
    ...counted(of('forgotten'), 'opened and forgotten', 'opened and forgotten'),
    ...counted(of('undated'), 'without a date', 'without a date'),
    ...counted(of('unconfirmed'), 'with a date to confirm', 'with a date to confirm'),
    ...counted(heldPieceCount, 'piece of wood on hold', 'pieces of wood on hold'),
  ];
  return parts.length ? `${parts.join(', ')}.` : 'Nothing needs you today.';
}
