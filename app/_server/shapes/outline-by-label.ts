import { theBook } from '@/app/_server/book/the-book';
import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import { loadPiece } from '@/app/_server/stock/load-piece';
import type { Outline } from '@/shared/outline/outline';

/** The outline of the piece that something sent names; undefined where it names none. */
export async function outlineByLabel(sent: unknown): Promise<Outline | undefined> {
  if (typeof sent !== 'object' || sent === null || !('label' in sent) || typeof sent.label !== 'string')
    return undefined;
  const line = await loadPiece((await theBook()).read, sent.label);
  const outline = line && outlineOfPiece(line);
  return outline?.ok ? outline.value : undefined;
}
