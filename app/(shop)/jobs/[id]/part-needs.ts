import type { NeedFacts } from '@/app/_server/needs/standing-needs';
import { sayNeed } from '@/app/(shop)/jobs/[id]/needs/say-need';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What each part of a job carries, in words, by the part's number: its hardware, resin, finish and wood, each thing once. */
export function partNeeds(needs: readonly NeedFacts[], prefer: UnitSystem): ReadonlyMap<number, string[]> {
  const things = new Map<string, NeedFacts & { partId: number }>();
  for (const need of needs) {
    const { partId, product, system, unit, kind, id } = need;
    if (partId === null) continue;
    const thing = kind === 'wood' ? `wood ${id}` : `${product?.id} ${system?.id} ${system?.part}`;
    const key = `${partId} ${thing} ${unit}`;
    const known = things.get(key);
    things.set(key, { ...need, partId, amount: need.amount + (known?.amount ?? 0) });
  }
  const said = new Map<number, string[]>();
  for (const { partId, ...need } of things.values()) {
    const { amount, name } = sayNeed({ ...need, partId }, prefer);
    said.set(partId, [...(said.get(partId) ?? []), `${amount} ${name}`]);
  }
  return said;
}
