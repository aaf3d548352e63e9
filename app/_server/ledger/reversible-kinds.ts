/**
 * Acts that write facts and promises instead of movements, or beside them. Each fact names the entry it rests on and stands
 * while that entry is not reversed, so that reversing the entry is all it takes; promises are undone line by line.
 */
const RESTS_ON_ITS_ENTRY: ReadonlySet<string> = new Set<string>([
  'closed-days-added',
  'closed-days-removed',
  'finish-sheet-noted',
  'part-removed',
  'air-logged',
  'need-added',
  'arriving-added',
  'arriving-came',
  'arriving-given-up',
  'reading-struck',
  'treated',
  'sample-kept',
  'sample-gone',
  'sheet-kept',
  'rags-laid-out',
  'fault-found',
  'fault-settled',
]);

/** Whether an entry of this kind can be undone though nothing of it moved. */
export const restsOnItsEntry = ({ kind }: { kind: string }): boolean => RESTS_ON_ITS_ENTRY.has(kind);
