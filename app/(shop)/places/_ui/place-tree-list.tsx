import Link from 'next/link';
import type { PlaceBranch } from '@/app/_server/places/place-tree';
import { Code } from '@/app/_ui/code';
import styles from '@/app/(shop)/places/_ui/places.module.css';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

/** `4 here, 12 with what is inside`. */
function sayCount({ things, all, inside }: PlaceBranch): string {
  if (inside.length === 0 || things === all) return things === 0 ? 'empty' : `${things} here`;
  return things === 0 ? `${all} inside` : `${things} here, ${all} with what is inside`;
}

/** Places within places, each with its label and how much stands in it. */
export function PlaceTreeList({ branches, label }: { branches: readonly PlaceBranch[]; label?: string }) {
  return (
    <ul className={styles.tree} aria-label={label}>
      {branches.map((branch) => (
        <li key={branch.id}>
          <Link href={`/places/${branch.label}`} className={styles.place}>
            <span className={styles.placeName}>{branch.name}</span>
            <span className={styles.soft}>
              <Code>{printOwnLabel(branch.label as OwnLabelCode)}</Code>
            </span>
            <span className={styles.count}>{sayCount(branch)}</span>
          </Link>
          {branch.inside.length > 0 ? <PlaceTreeList branches={branch.inside} /> : null}
        </li>
      ))}
    </ul>
  );
}
