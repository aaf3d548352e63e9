import Link from 'next/link';
import styles from '@/app/(shop)/on-hand/wall/_ui/wall.module.css';
import type { WallRow } from '@/app/(shop)/on-hand/wall/wall-row';

/** Slabs drawn to one scale, each a way to its page. Drawn by the server alone: hundreds of them wake no script. */
export function Wall({ rows }: { rows: readonly WallRow[] }) {
  const longestMm = Math.max(...rows.map((row) => row.lengthMm));
  return (
    <ul className={styles.wall} aria-label="Slabs">
      {rows.map((row) => (
        <li key={row.label} className={styles.slab}>
          <Link href={`/pieces/${row.label}`} prefetch={false} className={styles.link}>
            <svg
              viewBox={row.box}
              className={styles.drawing}
              style={{ width: `${(row.lengthMm / longestMm) * 100}%` }}
              aria-hidden="true"
              focusable="false"
            >
              <path className={styles.wood} data-sketch={row.measured ? undefined : true} d={row.wood} />
              {row.defects ? <path className={styles.defect} d={row.defects} /> : null}
              {row.straps ? <path className={styles.strap} d={row.straps} /> : null}
            </svg>
            <b>
              {row.species} <span className={styles.code}>{row.code}</span>
            </b>
            <span>{row.size}</span>
            {row.says ? <span className={styles.says}>{row.says}</span> : null}
          </Link>
        </li>
      ))}
    </ul>
  );
}
