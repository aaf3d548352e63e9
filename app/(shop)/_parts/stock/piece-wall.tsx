import Link from 'next/link';
import { Code } from '@/app/_ui/code';
import { VerdictPill } from '@/app/_ui/verdict/verdict-pill';
import type { PieceRow } from '@/app/(shop)/_parts/stock/piece-row';
import { RowDrawing } from '@/app/(shop)/_parts/stock/row-drawing';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

/** Pieces of wood drawn to one scale, each with its words. The whole drawing goes to the piece's page. */
export function PieceWall({ rows, label, here }: { rows: readonly PieceRow[]; label: string; here?: string }) {
  const longestMm = Math.max(...rows.flatMap((row) => (row.isPack ? [] : row.shape.lengthMm)));
  return (
    <ul className={styles.wall} aria-label={label}>
      {rows.map((row) => (
        <li
          key={row.stockId}
          className={styles.piece}
          data-used-up={row.usedUp || undefined}
          data-here={row.label === here || undefined}
        >
          {row.isPack ? null : <RowDrawing row={row} longestMm={longestMm} />}
          <div className={styles.pieceWords}>
            <p className={styles.pieceTitle}>
              {row.label === here ? (
                <b>This one</b>
              ) : (
                <Link href={`/pieces/${row.label}`} className={styles.link}>
                  {row.title}
                </Link>
              )}
              <Code>{printOwnLabel(row.label as OwnLabelCode)}</Code>
            </p>
            <p>{row.size}</p>
            <p className={styles.soft}>
              {[row.flitch, row.moisture, row.place ?? 'No place'].filter(Boolean).join(' · ')}
            </p>
            <p className={styles.standing}>
              {row.usedUp ? <b>No longer in the shop</b> : <VerdictPill word={row.word} />}
              {row.because && !row.usedUp ? <span className={styles.because}>{row.because}</span> : null}
            </p>
          </div>
        </li>
      ))}
    </ul>
  );
}

/** Says what of the drawings was measured. Stands once above drawings that carry signs. */
export function DrawnHow({ rows }: { rows: readonly PieceRow[] }) {
  const drawn = rows.filter((row) => !row.isPack);
  const rough = drawn.filter((row) => !row.measured);
  if (drawn.length === 0) return null;
  const scale = drawn.length > 1 ? 'Drawn to one scale' : 'Drawn to scale';
  const from =
    rough.length === 0
      ? 'as measured'
      : rough.length === drawn.length
        ? 'from the length and three widths'
        : 'as measured; what was not measured yet, from the length and three widths';
  const signs = rough.some((row) => row.marks.length > 0);
  return (
    <p className={styles.how}>
      {scale} {from}.
      {signs
        ? ` Straps, breaks and checks${rough.length < drawn.length ? ' there' : ''} are signs: where they are was not measured.`
        : ''}
    </p>
  );
}
