import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { SlabToSearch } from '@/shared/fit/fit-request';

/** A piece as the search needs it, with what is marked on it; undefined where its widths make no outline. */
export function slabToSearch(line: PieceLine): SlabToSearch | undefined {
  const outline = outlineOfPiece(line);
  if (!outline.ok) return undefined;
  return {
    id: line.label,
    outline: outline.value,
    defects: line.marks.defects,
    endChecks: line.marks.endChecks,
    ...(line.sapwoodNm !== null && { sapwood: line.sapwoodNm }),
  };
}

/** What makes two pieces the same to the search: their outline and whatever lies on it. */
export function searchKey({ outline, defects, endChecks, sapwood }: SlabToSearch): string {
  return JSON.stringify([outline, defects, endChecks, sapwood ?? null]);
}
