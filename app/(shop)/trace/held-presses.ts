import type { TraceNode } from '@/app/_server/trace/name-things';
import type { StillHeld } from '@/app/_server/trace/still-held';

/** A thing that is held, as far as it is named in a list. */
export type HeldThing = Pick<TraceNode, 'key' | 'kind' | 'id' | 'href' | 'label' | 'code' | 'title'>;

/** One press of a trace that still holds something, with what of it is seen here. */
export type HeldPress = { entryId: number; why: string; reference: string; things: HeldThing[] };

/** Things on hold by the press that held them, the newest press first. `things`: lots, containers and pieces. */
export function heldPresses(held: readonly StillHeld[], things: readonly HeldThing[]): HeldPress[] {
  const byId = new Map(things.map((thing) => [thing.id, thing]));
  const presses = new Map<number, HeldPress>();
  for (const { entryId, stockId, why, reference } of held) {
    const press = presses.get(entryId) ?? { entryId, why, reference, things: [] };
    const thing = byId.get(stockId);
    if (thing) press.things.push(thing);
    presses.set(entryId, press);
  }
  return [...presses.values()].sort((a, b) => b.entryId - a.entryId);
}
