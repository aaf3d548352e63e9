'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';
import styles from '@/app/_ui/frame/frame.module.css';
import { useRoom } from '@/app/_ui/use-room';

const MOMENTS = [
  { href: '/arrive', words: 'Arrive' },
  { href: '/on-hand', words: 'On hand' },
  { href: '/pull', words: 'Pull' },
];
const BESIDE = [
  { href: '/jobs', words: 'Jobs' },
  { href: '/watch', words: 'Watch' },
];
const QUIET = [
  { href: '/places', words: 'Places' },
  { href: '/labels', words: 'Labels' },
  { href: '/settings', words: 'Settings' },
];

/** Only along the bottom does it lie over the page. */
const liesOver = (list: HTMLElement) =>
  list.parentElement !== null && getComputedStyle(list.parentElement).position === 'fixed';

/** The navigation. One list for both shapes of screen, so that a reader learns it once. */
export function Places() {
  const path = usePathname();
  const room = useRoom('--bar', liesOver);
  const under = (href: string) => path === href || path.startsWith(`${href}/`);

  return (
    <nav aria-label="Main" className={styles.places}>
      <p className={styles.name}>Flitchbook</p>
      <ul ref={room} className={styles.keys}>
        {MOMENTS.map(({ href, words }) => (
          <li key={href}>
            <Link href={href} aria-current={under(href) ? 'page' : undefined} className={styles.moment}>
              {words}
            </Link>
          </li>
        ))}
        {BESIDE.map(({ href, words }) => (
          <li key={href}>
            <Link href={href} aria-current={under(href) ? 'page' : undefined} className={styles.beside}>
              {words}
            </Link>
          </li>
        ))}
      </ul>
      <ul className={styles.quiet}>
        {QUIET.map(({ href, words }) => (
          <li key={href}>
            <Link href={href} aria-current={under(href) ? 'page' : undefined} className={styles.beside}>
              {words}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
