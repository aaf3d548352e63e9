import Link from 'next/link';
import styles from '@/app/(shop)/on-hand/_ui/on-hand.module.css';
import type { Shelf } from '@/app/(shop)/on-hand/shelf';

/** Of each, so that the list itself stays in sight. */
const MOST = 3;

/** Places, jobs, and products of which nothing is in the list below, that a search also found. */
export function AlsoFound({ shelf }: { shelf: Shelf }) {
  const listed = new Set(shelf.containers.map((row) => row.productId));
  const groups = [
    {
      name: 'Products',
      links: shelf.products
        .filter(({ id }) => !listed.has(id))
        .map(({ id, name, maker }) => ({ href: `/products/${id}`, words: name, more: maker })),
    },
    {
      name: 'Places',
      links: shelf.places.map(({ label, name, inside }) => ({
        href: `/places/${label}`,
        words: name,
        more: inside ?? '',
      })),
    },
    {
      name: 'Jobs',
      links: shelf.jobs.map(({ id, name, client }) => ({ href: `/jobs/${id}`, words: name, more: client })),
    },
  ]
    .filter(({ links }) => links.length > 0)
    .map(({ name, links }) => ({ name, links: links.slice(0, MOST) }));
  if (groups.length === 0) return null;
  return (
    <div className={styles.also}>
      {groups.map(({ name, links }) => (
        <div key={name} className={styles.alsoGroup}>
          <h2>{name}</h2>
          <ul aria-label={`${name} found`}>
            {links.map(({ href, words, more }) => (
              <li key={href}>
                <Link href={href}>{words}</Link> {more ? <span>{more}</span> : null}
              </li>
            ))}
          </ul>
        </div>
      ))}
    </div>
  );
}
