import type { Problem } from '@/shared/allocation/problem';
import type { ProgramAnswer } from '@/shared/allocation/program';
import type { Values } from '@/shared/allocation/whole-values';

/**
 * Puts the order of expiry of a large problem right product by product: the surfaces that might be of it choose their lots
 * anew, and its containers are opened anew, while everything else keeps what it has. `ask` solves for the order with those
 * values kept and every measure before it held, so none can get worse; nothing is proved of the order itself.
 */
export async function tidyOrder(
  { groups, surfaces, batches, slots }: Problem,
  values: Values | undefined,
  ask: (kept: ReadonlyMap<string, number>, from: Values) => Promise<ProgramAnswer>,
): Promise<Values | undefined> {
  let best = values;
  for (const product of new Set(groups.map((group) => group.product))) {
    if (!best) return undefined;
    const ofProduct = new Set(groups.flatMap((group) => (group.product === product ? [group.lot] : [])));
    const names = [
      ...surfaces.flatMap(({ lots }, nr) =>
        lots.some((lot) => ofProduct.has(lot)) ? [] : lots.map((_, l) => `u${nr}_${l}`),
      ),
      ...batches.flatMap(({ choices }, nr) => choices.map((_, c) => `b${nr}_${c}`)),
      ...slots.flatMap(({ group }, at) => (groups[group]?.product === product ? [] : [`k${at}`])),
    ];
    const known: Values = best;
    const kept = names.flatMap((name): [string, number][] => {
      const value = known.get(name);
      return value === undefined ? [] : [[name, Math.round(value)]];
    });
    const answer = await ask(new Map(kept), known);
    if (answer.status === 'best' || answer.status === 'some') best = answer.values;
  }
  return best;
}
