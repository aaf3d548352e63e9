import type { WatchList } from '@/app/_server/watch/watch-list';
import type { WatchNotes } from '@/app/_server/watch/watch-notes';

const counted = (count: number, one: string, many: string) =>
  count === 0 ? [] : [`${count.toLocaleString('en')} ${count === 1 ? one : many}`];

/**
 * What needs attention in one sentence: `2 steps at the bench, 3 to use first, 1 on hold.` Counts lines, containers, and
 * held wood.
 */
export function sayWatch(
  { lists, heldPieceCount }: { lists: Record<WatchList, { containers: number }>; heldPieceCount: number },
  notes?: WatchNotes,
): string {
  const of = (list: WatchList) => lists[list].containers;
  const lines = (list: keyof WatchNotes) => notes?.[list].length ?? 0;
  const parts = [
    ...counted(lines('rags'), 'finish with rags to lay out', 'finishes with rags to lay out'),
    ...counted(lines('bench'), 'step at the bench', 'steps at the bench'),
    ...counted(lines('planned'), 'not good for its job', 'not good for their jobs'),
    ...counted(lines('due'), 'job due too early', 'jobs due too early'),
    ...counted(of('expiring'), 'to use first', 'to use first'),
    ...counted(of('expired'), 'past its day', 'past their day'),
    ...counted(of('spoilt'), 'spoilt', 'spoilt'),
    ...counted(of('retest'), 'to test again', 'to test again'),
    ...counted(lines('pairs'), 'pair of lots to test again', 'pairs of lots to test again'),
    ...counted(of('on-hold'), 'on hold', 'on hold'),
    ...counted(of('forgotten'), 'opened and forgotten', 'opened and forgotten'),
    ...counted(of('undated'), 'without a date', 'without a date'),
    ...counted(of('unconfirmed'), 'with a date to confirm', 'with a date to confirm'),
    ...counted(lines('samples'), 'sample to look at', 'samples to look at'),
    ...counted(lines('readings'), 'moisture reading due', 'moisture readings due'),
    ...counted(lines('idle'), 'promised and not moving', 'promised and not moving'),
    ...counted(heldPieceCount, 'piece of wood on hold', 'pieces of wood on hold'),
  ];
  return parts.length ? `${parts.join(', ')}.` : 'Nothing needs you today.';
}
