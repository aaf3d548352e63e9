import type { TraceNode } from '@/app/_server/trace/name-things';
import type { StillHeld } from '@/app/_server/trace/still-held';

/** One press of a trace that still holds something, with what of it is in this trace. */
export type HeldPress = { entryId: number; why: string; reference: string; things: TraceNode[] };

/** Things on hold by the press that held them, the newest press first. */
export function heldPresses(held: readonly StillHeld[], left: readonly TraceNode[]): HeldPress[] {
  const things = new Map(left.map((node) => [node.id, node]));
  const presses = new Map<number, HeldPress>();
  for (const { entryId, stockId, why, reference } of held) {
    const press = presses.get(entryId) ?? { entryId, why, reference, things: [] };
    const thing = things.get(stockId);
    if (thing) press.things.push(thing);
    presses.set(entryId, press);
  }
  return [...presses.values()].sort((a, b) => b.entryId - a.entryId);
}
