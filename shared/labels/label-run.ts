import type { LabelContent } from './label-content';

/**
 * The labels to print, in order. A slab always gets its twin, one for each end; everything else gets `copies` of the same
 * label (1 or 2), so that one may be damaged.
 *
 * @example labelRun([slab, tin], 2).length // 4
 */
export function labelRun(contents: readonly LabelContent[], copies: 1 | 2): LabelContent[] {
  return contents.flatMap((content) => {
    if (content.kind === 'slab') {
      return ([1, 2] as const).map((nr) => ({ ...content, end: { of: 2 as const, nr } }));
    }
    return Array.from({ length: copies }, () => content);
  });
}

/** How many labels `labelRun` would print, for those who only know the kinds. */
export function labelRunLength(contents: readonly Pick<LabelContent, 'kind'>[], copies: 1 | 2): number {
  return contents.reduce((sum, content) => sum + (content.kind === 'slab' ? 2 : copies), 0);
}
