import type { Condition } from '@/shared/shelf-life/types/container-facts';

export const TREATMENT_KINDS = ['warmed', 'stirred', 'strained', 'froze', 'overheated', 'crystals-seen'] as const;
/** What is done to the content of a container, or what it goes through. */
export type TreatmentKind = (typeof TREATMENT_KINDS)[number];

const BRINGS: Readonly<Partial<Record<TreatmentKind, Condition>>> = {
  froze: 'frozen',
  overheated: 'stored-out-of-range',
  'crystals-seen': 'crystals',
};

/**
 * What is wrong with a container after a treatment. Freezing, heat and crystals are noted; what settled is in the resin
 * again once it is stirred. Crystals dissolve by warming and are spread by stirring: they are gone when both were done
 * since they were seen (`since`, what was done before this one), and one alone leaves them. Straining takes lumps out and
 * leaves what is dissolved: it clears nothing, and never makes good what is past its date. Common practice; how warm and
 * how long is the maker's to say.
 *
 * Example: crystals, warmed and then stirred → none; crystals, strained → crystals.
 */
export function conditionsAfter(
  before: readonly Condition[],
  kind: TreatmentKind,
  since: readonly TreatmentKind[],
): readonly Condition[] {
  const brings = BRINGS[kind];
  if (brings) return before.includes(brings) ? before : [...before, brings];
  const done = new Set<TreatmentKind>([...since, kind]);
  const clears: Condition[] = [
    ...(kind === 'stirred' ? (['settled'] as const) : []),
    ...(done.has('warmed') && done.has('stirred') && kind !== 'strained' ? (['crystals'] as const) : []),
  ];
  return before.filter((each) => !clears.includes(each));
}
