import { searchHere } from '@/app/_server/fits/search-here';
import type { Search, SearchTask } from '@/app/_server/fits/search-task';
import { searchKey, slabToSearch } from '@/app/_server/fits/slab-to-search';
import { loadPiece, type PieceLine } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import { type FitRequest, readRequest } from '@/shared/fit/fit-request';
import { type RiverRequest, riverAsCut } from '@/shared/fit/fit-river';
import type { RiverVoid } from '@/shared/fit/river-void';
import { err, ok, type Result } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';

/** One slab sawn down its length, or two, and the river that is asked to run between them. */
export type RiverAsked = {
  readonly labels: readonly string[];
  readonly request: FitRequest;
  readonly river: RiverRequest;
};

export type FoundRiver = {
  readonly lines: readonly PieceLine[];
  /** What the search went by, a text for each slab: as long as it is the same, so is the river. */
  readonly keys: readonly string[];
  readonly space: RiverVoid;
  readonly narrowest: Nanometres;
  readonly widest: Nanometres;
  readonly finished: Nanometres;
};

export type RiverTrouble = {
  readonly code: 'river-slab-unknown' | 'river-slab-shapeless' | 'river-gone';
  readonly label: string;
};

/**
 * The river between slabs that were found before, searched for again in their shapes and marks of today. Fails with the
 * slab that is not in the book or has no outline, or where the top no longer fits whole.
 */
export async function riverOfPieces(
  book: Pick<OpenBook, 'read'>,
  { labels, request, river }: RiverAsked,
  search: Search = searchHere(),
): Promise<Result<FoundRiver, RiverTrouble>> {
  const read = readRequest(request);
  if (!read.ok) return err({ code: 'river-gone', label: labels[0] ?? '' });
  const lines: PieceLine[] = [];
  for (const label of labels) {
    const line = await loadPiece(book.read, label);
    if (!line) return err({ code: 'river-slab-unknown', label });
    lines.push(line);
  }
  const slabs = lines.map((line) => (line.form === 'pack' ? undefined : slabToSearch(line)));
  const without = slabs.indexOf(undefined);
  const [one, two] = slabs;
  if (without >= 0 || !one) return err({ code: 'river-slab-shapeless', label: labels[Math.max(0, without)] ?? '' });
  const asked: SearchTask['slabs'] = two ? [one, two] : [one];
  const answer = await search({ request, make: { of: 'river', river }, slabs: asked });
  if (answer.of !== 'river' || answer.fit.answer !== 'yes') return err({ code: 'river-gone', label: labels[0] ?? '' });
  const { fit } = answer;
  const width = (um: number) => nanometres(Math.round(um) * 1000);
  return ok({
    lines,
    keys: asked.map(searchKey),
    space: riverAsCut(asked, read.value, { fit, part: 1 }),
    // The search lets a micrometre go; what was asked for is not said to be less for it.
    narrowest: nanometres(Math.max(river.least, width(fit.river.narrowest))),
    widest: width(fit.river.widest),
    finished: river.thickness,
  });
}
