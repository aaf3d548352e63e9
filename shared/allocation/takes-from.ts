import type { StockAmount, Take } from '@/shared/allocation/allocation-ask';
import type { Problem } from '@/shared/allocation/problem';
import { exactInteger } from '@/shared/units/exact-integer';
import type { StockUnit } from '@/shared/units/stock-unit';

/**
 * Which container each amount comes out of. The containers of a group are told apart only now, in the order of their
 * labels: each is emptied before the next, by the needs in the order of their days, so that none is opened before its slot
 * says and no more are opened than the amounts ask for.
 */
export function takesFrom(
  { needs, slots, groups, step }: Problem,
  amounts: readonly (readonly (readonly [number, number])[])[],
  opened: readonly number[],
): readonly Take[] {
  const takes: Take[] = [];
  const used = groups.map(() => 0);
  const inOrder = [...needs.keys()].sort((a, b) => ((needs[a]?.day ?? '') < (needs[b]?.day ?? '') ? -1 : 1) || a - b);
  slots.forEach((slot, at) => {
    const group = groups[slot.group];
    const from = used[slot.group] ?? 0;
    const tins = (group?.containers ?? []).slice(from, from + (opened[at] ?? 0));
    if (group?.sealed) used[slot.group] = from + tins.length;
    let tin = 0;
    let room = group?.each ?? 0;
    for (const nr of inOrder) {
      let wanted = (amounts[nr]?.find(([of]) => of === at)?.[1] ?? 0) * step;
      while (wanted > 0) {
        if (room === 0) {
          tin += 1;
          room = group?.each ?? 0;
        }
        const [need, container] = [needs[nr]?.need, tins[tin]];
        if (!need || !container) throw new Error('A slot holds what is drawn from it.');
        const amount = Math.min(wanted, room);
        takes.push({ needId: need.id, containerId: container.id, amount: whole(amount) });
        wanted -= amount;
        room -= amount;
      }
    }
  });
  return takes;
}

function whole(amount: number): StockAmount {
  return exactInteger<StockUnit>(amount);
}
