import type { Problem } from '@/shared/allocation/problem';
import type { Row } from '@/shared/allocation/program';

/**
 * What the other rows imply once every surface is of one lot and every need is met, said in one row for each lot, and for
 * each product, and each day: what is wanted of it from that day on, or up to it, is at most what its open containers hold
 * and its opened ones bring. A solver that sees it in one row can round it to whole containers, and so prove in moments
 * what it otherwise counts out.
 */
export function lotRows(problem: Problem): readonly Row[] {
  const { groups } = problem;
  const lots = [...new Set(groups.map(({ lot }) => lot))].map((lot) => [lot]);
  const products = [...new Set(groups.map(({ product }) => product))]
    .map((product) => [...new Set(groups.filter((group) => group.product === product).map(({ lot }) => lot))])
    .filter((some) => some.length > 1);
  return [...lots, ...products].flatMap((some) => rowsOf(problem, new Set(some)));
}

function rowsOf({ needs, groups, slots, surfaces, unit }: Problem, lots: ReadonlySet<string>): readonly Row[] {
  const ofLots = [...slots.entries()].flatMap(([at, slot]) => {
    const group = groups[slot.group];
    if (!group || !lots.has(group.lot)) return [];
    const days = slot.needs.map((nr) => needs[nr]?.day ?? '');
    return [{ name: group.sealed ? `k${at}` : undefined, each: group.each / unit, days, needs: slot.needs }];
  });
  const drawing = [...new Set(ofLots.flatMap((slot) => slot.needs))].flatMap((nr) => needs[nr] ?? []);
  const days = [...new Set(drawing.map(({ day }) => day))].sort();
  // The same needs say the same, whether they are those from a day or those up to one.
  const spans = [...days.map((day) => [day, '9999'] as const), ...days.slice(0, -1).map((day) => ['', day] as const)];
  return spans.flatMap(([from, to]): Row[] => {
    const within = (day: string) => day >= from && day <= to;
    const times = new Map<string, number>();
    let bound = 0;
    for (const { day, surface, need } of drawing) {
      if (!within(day)) continue;
      const choices = surfaces[surface]?.lots ?? [];
      if (choices.every((lot) => lots.has(lot))) bound += need.amount / unit;
      else
        choices.forEach((lot, l) => {
          const name = `u${surface}_${l}`;
          if (lots.has(lot)) times.set(name, (times.get(name) ?? 0) - need.amount / unit);
        });
    }
    for (const slot of ofLots) {
      if (!slot.days.some(within)) continue;
      if (slot.name) times.set(slot.name, slot.each);
      else bound -= slot.each;
    }
    const terms = [...times].map(([name, each]) => ({ name, times: each }));
    return terms.length ? [{ terms, sense: '>=', bound }] : [];
  });
}
