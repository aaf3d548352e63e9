import Link from 'next/link';
import type { ReactNode } from 'react';
import styles from '@/app/_ui/page.module.css';

export interface PageProps {
  title: ReactNode;
  /** What the page is about right now: the job, the lift, the day. Stands at the right of the title. */
  context?: ReactNode;
  /** Where the reader came from, in words: `{ href: '/jobs', words: 'Jobs' }`. */
  back?: { href: string; words: string };
  /** Gives the phone its way to the settings; the wide screen has it down the side. */
  settings?: boolean;
  children: ReactNode;
}

/** One page: its title row, then whatever it holds. */
export function Page({ title, context, back, settings = false, children }: PageProps) {
  return (
    <div className={styles.page}>
      <header className={styles.header}>
        {back ? (
          <Link href={back.href} className={styles.back}>
            <span aria-hidden="true">← </span>
            <span className="unseen">Back to </span>
            {back.words}
          </Link>
        ) : null}
        <div className={styles.row}>
          <h1 className={styles.title}>{title}</h1>
          {context ? <p className={styles.context}>{context}</p> : null}
          {settings ? (
            <Link href="/settings" className={styles.settings}>
              Settings
            </Link>
          ) : null}
        </div>
      </header>
      {children}
    </div>
  );
}
