import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

/** A sister that could be the other half of a bookmatch. */
export type PairChoice = { readonly label: OwnLabelCode; readonly words: string };

const MOST = 4;

/** The sisters of a piece's flitch that are free to be its other half: its neighbours in the log first, then the nearest. */
export function pairChoices(line: PieceLine, flitch: readonly PieceLine[]): PairChoice[] {
  if (!line.facts.inStock) return [];
  const apart = (sister: PieceLine) =>
    line.flitchNumber === null || sister.flitchNumber === null
      ? Number.POSITIVE_INFINITY
      : Math.abs(sister.flitchNumber - line.flitchNumber);
  return flitch
    .filter((sister) => sister.stockId !== line.stockId && sister.facts.inStock && !sister.pairedWith?.inStock)
    .filter((sister) => sister.form === line.form)
    .toSorted((a, b) => (apart(a) === apart(b) ? a.stockId - b.stockId : apart(a) < apart(b) ? -1 : 1))
    .slice(0, MOST)
    .map((sister) => {
      const shown = printOwnLabel(sister.label);
      const number = sister.flitchNumber === null ? '' : `, no. ${sister.flitchNumber}`;
      return { label: sister.label, words: `${shown}${number}${apart(sister) === 1 ? ', its neighbour' : ''}` };
    });
}
