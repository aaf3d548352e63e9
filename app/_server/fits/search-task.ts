import type { FitAsk } from '@/app/_server/fits/fit-ask';
import { fitPiece, type OutlineFit } from '@/app/_server/fits/fit-piece';
import type { FitAnswer } from '@/shared/fit/fit-answer';
import { fitBookmatched } from '@/shared/fit/fit-bookmatched';
import { type FitRequest, type ReadRequest, readRequest, type SlabToSearch } from '@/shared/fit/fit-request';
import { fitRiver, type RiverAnswer } from '@/shared/fit/fit-river';

/** One slab, or two together, to be asked for a top: plain data, so that it can be handed to another thread. */
export type SearchTask = {
  readonly request: FitRequest;
  readonly make: FitAsk['make'];
  readonly slabs: readonly [SlabToSearch] | readonly [SlabToSearch, SlabToSearch];
};

export type SearchAnswer =
  | { readonly of: 'one'; readonly fit: OutlineFit }
  | { readonly of: 'pair'; readonly fit: FitAnswer }
  | { readonly of: 'river'; readonly fit: RiverAnswer };

/** Who does a task: this thread, or another. Rejects where the search itself broke. */
export type Search = (task: SearchTask) => Promise<SearchAnswer>;

/** Does tasks one after another, reading a request that many of them share once. */
export function taskSearcher(): (task: SearchTask) => SearchAnswer {
  let last: { readonly key: string; readonly read: ReadRequest } | undefined;
  const readOnce = (request: FitRequest): ReadRequest => {
    const key = JSON.stringify(request);
    if (last?.key === key) return last.read;
    const read = readRequest(request);
    if (!read.ok) throw new Error(`A request that was read before cannot be read: ${read.error.code}`);
    last = { key, read: read.value };
    return read.value;
  };
  return ({ request, make, slabs }) => {
    const read = readOnce(request);
    if (make.of === 'one') return { of: 'one', fit: fitPiece(slabs[0], read) };
    if (make.of === 'river') return { of: 'river', fit: fitRiver(slabs, read, make.river) };
    const [one, two] = slabs;
    if (!two) throw new Error('A pair has two slabs.');
    return { of: 'pair', fit: fitBookmatched([one, two], read) };
  };
}
