import { daysToWait } from '@/shared/calendar/days-to-wait';
import { lineOfEachPart } from '@/shared/timeline/line-of-each-part';
import { inOrder, type Step, type StepKind } from '@/shared/timeline/step';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';

/** Why one step waits for another. */
export type LinkBecause =
  | 'wood-dry'
  | 'sealed'
  | 'again'
  | 'demould'
  | 'demoulded'
  | 'full-cure'
  | 'flattened'
  | 'recoat'
  | 'finish-cure'
  | 'last';

/** The step `after` comes so many days after the step `before` at the least; past `mostDays` it is sanded first. */
export type Link = {
  readonly before: Step;
  readonly after: Step;
  readonly leastDays: number;
  readonly mostDays?: number;
  readonly because: LinkBecause;
};

/** Where the sheet names no time to pour or coat again, it waits a day. Common practice. */
const UNSAID_HOURS = 24;

/**
 * What waits for what, and how long, by the sheets of the resins and the finishes. A step of a part waits for that part's and
 * for the whole job's; a step of the whole job for those of every part; what is said below holds within each. Wood dries before it is sealed, poured
 * on, flattened or joined; a seal coat goes before the first lift; each lift waits until the one under it may be poured on;
 * the form comes off, and anything is done to the casting, when the sheet lets it; flattening and coating wait for the full
 * cure, joining and coating for the flattening; coats of one finish wait for one another; delivery is last, after the full cure and the finish's own. Hours are
 * rounded up to whole days, within a working day to none. Where a sheet says nothing only the order is kept. Lifts of a
 * pour go by their numbers, coats of a finish by theirs, whatever their days.
 */
export function linksOf(steps: readonly Step[], facts: Pick<TimelineFacts, 'pours' | 'finishes'>): Link[] {
  const found = new Map<string, Link>();
  for (const line of lineOfEachPart(steps)) {
    for (const link of linksOfLine(line, facts)) {
      const { before, after, because, leastDays, mostDays = '' } = link;
      // Two steps of the whole job are met on the line of every part.
      found.set([before.id, after.id, because, leastDays, mostDays].join(' '), link);
    }
  }
  return [...found.values()];
}

/** The links of one line, whatever part its steps are of. */
function linksOfLine(steps: readonly Step[], facts: Pick<TimelineFacts, 'pours' | 'finishes'>): Link[] {
  const links: Link[] = [];
  const of = (...kinds: StepKind[]) => inOrder(steps.filter(({ kind }) => kinds.includes(kind)));
  const link = (before: readonly Step[], after: readonly Step[], because: LinkBecause, leastDays = 0) => {
    for (const one of before) for (const other of after) links.push({ before: one, after: other, leastDays, because });
  };
  const [flatten, assembly, coats, delivery] = [of('flatten'), of('assembly'), of('coat'), of('delivery')];
  link(of('wood-dry'), of('seal', 'lift', 'flatten', 'assembly'), 'wood-dry');
  link(flatten, [...assembly, ...coats], 'flattened');
  link(of('demould', 'flatten', 'assembly', 'cure', 'other'), delivery, 'last');

  for (const [pourId, lifts] of groups(of('lift'), 'pourId')) {
    const timing = facts.pours[pourId ?? 0] ?? {};
    const ofPour = (...kinds: StepKind[]) => of(...kinds).filter((step) => step.pourId === pourId);
    // What is done to a casting may be planned without saying to which.
    const onPour = (some: readonly Step[]) => some.filter((step) => step.pourId === pourId || step.pourId === null);
    const last = lifts.slice(-1);
    link(ofPour('seal'), lifts.slice(0, 1), 'sealed');
    for (const [nr, after] of lifts.entries()) {
      const before = lifts[nr - 1];
      if (before)
        links.push({ before, after, ...window(timing.againFromHours, timing.againToHours), because: 'again' });
    }
    const demouldDays = Math.ceil((timing.demouldHours ?? 0) / 24);
    const cureDays = Math.ceil(timing.fullCureDays ?? 0);
    link(last, ofPour('demould'), 'demould', demouldDays);
    link(ofPour('demould'), [...onPour(flatten), ...coats, ...onPour(assembly)], 'demoulded');
    link(last, [...onPour(flatten), ...coats, ...onPour(assembly), ...delivery], 'demould', demouldDays);
    if (cureDays > demouldDays) {
      const cured = of('cure').filter((step) => step.pourId === pourId && step.productId === null);
      link(last, [...cured, ...onPour(flatten), ...coats, ...delivery], 'full-cure', cureDays);
    }
  }

  for (const [productId, some] of groups(coats, 'productId')) {
    const timing = facts.finishes[productId ?? 0] ?? {};
    for (const [nr, after] of some.entries()) {
      const before = some[nr - 1];
      if (before) {
        links.push({ before, after, ...window(timing.recoatFromHours, timing.recoatToHours), because: 'recoat' });
      }
    }
    const cured = of('cure').filter((step) => step.pourId === null && step.productId === productId);
    link(some.slice(-1), [...cured, ...delivery], 'finish-cure', timing.cureDays ?? 0);
  }
  return links;
}

function window(fromHours = UNSAID_HOURS, toHours?: number): { leastDays: number; mostDays?: number } {
  return { leastDays: daysToWait(fromHours), ...(toHours !== undefined && { mostDays: Math.floor(toHours / 24) }) };
}

/** Steps by pour or product, in the order in which they were planned. */
export function groups(
  steps: readonly Step[],
  by: 'pourId' | 'productId',
): ReadonlyMap<number | null, readonly Step[]> {
  const found = new Map<number | null, Step[]>();
  const planned = [...steps].sort((a, b) => (a.coatNr ?? 0) - (b.coatNr ?? 0) || a.id - b.id);
  for (const step of planned) found.set(step[by], [...(found.get(step[by]) ?? []), step]);
  return found;
}
