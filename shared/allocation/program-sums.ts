import type { Problem } from '@/shared/allocation/problem';
import type { Term } from '@/shared/allocation/program';

/** One more split surface outweighs every change of lot there could be, so both go into one solve without either suffering. */
export function splitWeight({ surfaces }: Problem): number {
  return 1 + surfaces.reduce((sum, { lots }) => sum + Math.max(0, lots.length - 1), 0);
}

/** Waste, weighed in steps, when nothing is taken and nothing opened. */
export function wasteAtRest({ groups, slots, step }: Problem): number {
  return groups.reduce((sum, { sealed, wastedShut, weight, each, containers, slots: of }) => {
    const wasted = sealed ? wastedShut : (slots[of[0] ?? -1]?.wasted ?? false);
    return sum + (wasted ? (weight * each * containers.length) / step : 0);
  }, 0);
}

/** How waste, weighed in steps, changes with what is opened and drawn. */
export function wasteTerms({ groups, slots, step, unit }: Problem): Term[] {
  return slots.flatMap((slot, at): Term[] => {
    const group = groups[slot.group];
    if (!group || group.weight === 0) return [];
    const opening = (group.weight * group.each * (Number(slot.wasted) - Number(group.wastedShut))) / step;
    return [
      ...(group.sealed && opening !== 0 ? [{ name: `k${at}`, times: opening }] : []),
      ...(slot.wasted
        ? slot.needs.map((need) => ({ name: `x${need}_${at}`, times: (-group.weight * unit) / step }))
        : []),
    ];
  });
}

/** The order of expiry. Ranks counted from the least of the problem: what is common to all of them decides nothing. */
export function orderTerms({ groups, slots, step, unit }: Problem): Term[] {
  const least = Math.min(...groups.map(({ rank }) => rank));
  return slots.flatMap((slot, at) => {
    const times = (((groups[slot.group]?.rank ?? 0) - least) * unit) / step;
    return times === 0 ? [] : slot.needs.map((need) => ({ name: `x${need}_${at}`, times }));
  });
}
