import { type FoundRiver, type RiverAsked, type RiverTrouble, riverOfPieces } from '@/app/_server/fits/river-of-pieces';
import { searchKey, slabToSearch } from '@/app/_server/fits/slab-to-search';
import type { Pen } from '@/app/_server/ledger/write-entry';
import { isSameRiver, type KeptRiver, keptRiver } from '@/app/_server/pours/kept-river';
import { pieceStands } from '@/app/_server/pours/named-pieces';
import type { PourLine } from '@/app/_server/pours/read-pour';
import type { Refusal } from '@/app/_server/refusal';
import { loadPiece } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok, type Result } from '@/shared/result/result';

/** The river a pour fills: asked for again with the area that was seen, or the one it had when it was planned before. */
export type RiverForPour =
  | (RiverAsked & { readonly is: 'asked'; readonly asked: string; readonly area: number })
  | { readonly is: 'kept'; readonly area: number };

export type SearchedRiver = Result<FoundRiver, RiverTrouble> | undefined;

/** Searches before the pen is taken: it takes a moment, and nobody else should wait for it. */
export async function searchRiver(book: OpenBook, river: RiverForPour | undefined): Promise<SearchedRiver> {
  return river?.is === 'asked' ? riverOfPieces(book, river) : undefined;
}

/**
 * The river to be kept with a pour, undefined where it fills none. Refused where a slab went or is promised to another job,
 * or where what was seen is not what the slabs give now; what was searched must still be true under the pen.
 */
export async function riverForPour(
  pen: Pen,
  river: RiverForPour | undefined,
  searched: SearchedRiver,
  { jobId, before, today }: { jobId: number; before: PourLine | undefined; today: CalendarDate },
): Promise<Result<KeptRiver | undefined, Refusal>> {
  if (!river) return ok(undefined);
  const refuse = (code: Refusal['code'], facts: Refusal['facts']) => err<Refusal>({ code, field: 'river', facts });
  if (river.is === 'kept') {
    const kept = before?.kept.river;
    return kept && isSameRiver(kept, river) ? ok(kept) : refuse('river-gone', {});
  }
  const label = river.labels[0] ?? '';
  const named = { label, other: river.labels[1] ?? null };
  if (!searched?.ok) {
    const { code, label: of } = searched?.error ?? { code: 'river-gone' as const, label };
    return refuse(code, code === 'river-gone' ? named : { label: of });
  }
  for (const [nr, line] of searched.value.lines.entries()) {
    const now = await loadPiece(pen.tx, line.label);
    const stands = now ? pieceStands(now, jobId) : { is: 'gone' as const };
    if (stands.is === 'gone') return refuse('river-slab-gone', { label: line.label });
    if (stands.is === 'elsewhere') return refuse('river-slab-promised', { label: line.label, job: stands.job.name });
    const slab = now && slabToSearch(now);
    if (!slab || searchKey(slab) !== searched.value.keys[nr]) return refuse('river-changed', named);
  }
  const found = keptRiver(searched.value, { asked: river.asked, searchedOn: today });
  return isSameRiver(found, river) ? ok(found) : refuse('river-changed', named);
}
