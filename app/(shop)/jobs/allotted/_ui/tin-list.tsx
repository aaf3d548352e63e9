import Link from 'next/link';
import type { ReactNode } from 'react';
import { Code } from '@/app/_ui/code';
import styles from '@/app/(shop)/jobs/allotted/_ui/allotted.module.css';
import type { TinView } from '@/app/(shop)/jobs/allotted/allotted-view';

/** Tins with what is taken of each, and under each what `children` makes of it. */
export function TinList({
  tins,
  title,
  children,
}: {
  tins: readonly TinView[];
  title: string;
  children?: (tin: TinView) => ReactNode;
}) {
  if (tins.length === 0) return null;
  return (
    <ul className={styles.tins} aria-label={title}>
      {tins.map((tin) => (
        <li key={tin.containerId}>
          <div className={styles.head}>
            <Link href={`/containers/${tin.label}`}>
              <Code>{tin.code}</Code>
            </Link>
            <b>{tin.amount}</b>
          </div>
          <p className={styles.soft}>
            {tin.where}; {tin.until}
            {tin.opens ? '. It is opened for this.' : ''}
          </p>
          {children?.(tin)}
        </li>
      ))}
    </ul>
  );
}
