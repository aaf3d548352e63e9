import type { CutPiece } from '@/app/_server/cuts/cut-piece';
import { standingCutOf } from '@/app/_server/cuts/standing-cut-of';
import type { Refusal } from '@/app/_server/refusal';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { WriteTransaction } from '@/prisma/open-book';

/** A kerf beyond this is a unit mistaken: 50 mm. */
export const WIDEST_KERF_NM = 50_000_000;
/** Less than this is veneer, and no saw leaves it: 1 mm. */
const THINNEST_NM = 1_000_000;

/** Why a piece cannot be cut like this now, or undefined. Somebody who cut it meanwhile is named. */
export async function refuseToCut(
  tx: WriteTransaction,
  line: PieceLine | undefined,
  { label, how, shapeId }: CutPiece,
): Promise<Refusal | undefined> {
  if (!line) return { code: 'not-found', facts: { label } };
  if (line.form === 'pack') return { code: 'pack-has-no-outline', facts: { label } };
  if (!line.facts.inStock) {
    const cut = await standingCutOf(tx, line.stockId);
    if (cut) return { code: 'cut-already', facts: { label, who: cut.who, pieces: cut.made.length } };
    return { code: 'no-longer-here', facts: { label } };
  }
  if ((line.shape?.id ?? null) !== shapeId) return { code: 'measured-meanwhile', facts: { label } };
  const kerfs = how.by === 'resaw' ? [how.kerfNm] : how.lines.map(({ kerf }) => kerf * 1000);
  if (kerfs.some((kerf) => !Number.isSafeInteger(kerf) || kerf < 0 || kerf > WIDEST_KERF_NM)) {
    return { code: 'outside-range', field: 'kerf' };
  }
  if (how.by === 'lines') return how.lines.length === 0 ? { code: 'no-line', field: 'lines' } : undefined;
  const lower = line.thicknessNm - how.upperNm - how.kerfNm;
  const isThin = !Number.isSafeInteger(how.upperNm) || how.upperNm < THINNEST_NM || lower < THINNEST_NM;
  return isThin ? { code: 'resaw-too-thin', field: 'upper' } : undefined;
}
