import { standingHolds } from '@/app/_server/trace/standing-holds';
import type { TraceReader } from '@/app/_server/trace/trace-steps';

/** Why the thing with this stock id is held as it is: what was written with the change of its hold that stands. */
export async function holdWhy(tx: TraceReader, stockId: number, hold: string): Promise<string> {
  return hold === 'free' ? '' : ((await holdWhys(tx, [stockId])).get(stockId) ?? '');
}

/** Why each of these held things is held; what nobody gave a reason for is left out. */
export async function holdWhys(tx: TraceReader, stockIds: readonly number[]): Promise<ReadonlyMap<number, string>> {
  const holds = await standingHolds(tx, stockIds);
  // An arrival has words of its own, which are not about the hold.
  const said = [...holds.values()].filter(({ kind, why }) => (kind === 'held' || kind === 'trace-held') && why !== '');
  return new Map(said.map(({ stockId, why }) => [stockId, why]));
}
