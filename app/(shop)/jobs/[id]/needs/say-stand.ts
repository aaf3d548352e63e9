import type { NeedView } from '@/app/(shop)/jobs/[id]/needs/need-view';

/** How the needs of a job stand, in one sentence. */
export function sayStand(views: readonly Pick<NeedView, 'word'>[]): string {
  const count = (word: NeedView['word']) => views.filter((view) => view.word === word).length;
  const of = (number: number, one: string, many: string) =>
    number === 0 ? [] : [`${number} ${number === 1 ? one : many}`];
  if (views.length === 0) return 'Nothing is on the list yet.';
  const settled = count('kept') + count('done');
  if (settled === views.length)
    return count('kept') === 0 ? 'All of it was used.' : 'Everything it needs is promised to it.';
  const parts = [
    ...of(count('short'), 'is short', 'are short'),
    ...of(count('coming'), 'waits for an order', 'wait for orders'),
    ...of(count('free'), 'is on hand and not promised', 'are on hand and not promised'),
    ...of(settled, 'is promised or used', 'are promised or used'),
  ];
  return `Of ${views.length} ${views.length === 1 ? 'need' : 'needs'}, ${parts.join(', ')}.`;
}
