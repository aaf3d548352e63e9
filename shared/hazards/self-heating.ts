/**
 * Finishes that dry by taking up oxygen and give off heat while they do: rags, pads and dust wet with them can catch fire
 * by themselves when they lie in a heap. Oils that polymerise, and varnishes, which most often hold such an oil. A lacquer, a
 * waterborne finish and shellac dry by losing solvent. Common practice; the product's own data sheet says which it is.
 */
const SELF_HEATING: ReadonlySet<string> = new Set(['hardwax-oil', 'two-part-oil', 'oil-finish', 'varnish']);

/** Whether what was wiped with a material of this kind is to be laid out. `leavesHotRags('two-part-oil')` is true. */
export function leavesHotRags(materialKind: string): boolean {
  return SELF_HEATING.has(materialKind);
}

/**
 * What to do with rags after such a finish, as one sentence each: the danger, what to do, who has the last word.
 * Covered metal containers, emptied daily: 29 CFR 1910.106(e)(9)(iii) and (h)(8)(iii), OSHA. A listed container for what
 * ignites by itself: International Fire Code 3304.2. Laid flat, singly, outdoors until stiff: common practice.
 */
export const RAG_CAUTION = {
  danger: 'Rags, pads and sanding dust wet with an oil that dries can heat up and catch fire by themselves in a heap.',
  todo: 'Lay each rag flat and by itself, outdoors and away from what burns, until it is dry and stiff; or put them in a listed metal can for oily waste, its lid closed, and empty it every day.',
  defers: 'The product’s safety data sheet and your local fire code come first.',
} as const;
