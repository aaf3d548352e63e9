import type { NeedFacts } from '@/app/_server/needs/standing-needs';

/** What is needed, in a few words. */
export function nameOf({ product, system, wood }: Pick<NeedFacts, 'product' | 'system' | 'wood'>): string {
  if (product) return product.name;
  if (system) return `${system.name}, part ${system.part}`;
  return [wood?.species || 'Any wood', wood?.form].filter(Boolean).join(' ');
}
