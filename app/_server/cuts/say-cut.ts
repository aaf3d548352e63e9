import type { CutPiece } from '@/app/_server/cuts/cut-piece';
import type { Parts } from '@/app/_server/cuts/parts-of-cut';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

/** "S-4V9TN3M sawn into 3 pieces, 1 of them scrap; 0.4 % sawdust. Split end": what the history says of a cut. */
export function sayCut(
  line: PieceLine,
  { how, why }: CutPiece,
  { whole, sawdust, parts }: Parts,
  scrap: number,
): string {
  const done =
    how.by === 'resaw'
      ? 'resawn'
      : how.bands === 'cut'
        ? 'fell apart when its bands were cut,'
        : how.lines.every(({ kerf }) => kerf === 0)
          ? 'broken'
          : 'sawn';
  const into = `into ${parts.length} piece${parts.length === 1 ? '' : 's'}`;
  const lost = scrap === 0 ? '' : `, ${scrap} of them scrap`;
  const dust = sawdust > 0 ? `; ${((100 * sawdust) / whole).toFixed(1)} % sawdust` : '';
  return [`${printOwnLabel(line.label)} ${done} ${into}${lost}${dust}`, why.trim()].filter(Boolean).join('. ');
}
