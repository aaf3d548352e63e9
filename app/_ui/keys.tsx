import Link from 'next/link';
import type { ComponentProps, ReactNode } from 'react';
import styles from '@/app/_ui/keys.module.css';
import { MeasuredBar } from '@/app/_ui/measured-bar';

export type KeyVariant = 'main' | 'ghost' | 'stop';

interface KeyLook {
  /** `main` is the one dark key of the screen, `ghost` an outline, `stop` an outline for what goes against the advice. */
  variant?: KeyVariant;
  /** What will happen, in words: "Into the book, cabinet 2". */
  children: ReactNode;
}

export type KeyProps = KeyLook &
  Omit<ComponentProps<'button'>, 'children' | 'className'> & {
    /** While true the key shows `pendingWords`, keeps its focus and takes no second press. */
    pending?: boolean;
    pendingWords?: ReactNode;
  };

/** A key to press. Outside a form give it `onClick` in a client component; inside one use `SubmitKey`. */
export function Key({ variant = 'main', pending = false, pendingWords, children, onClick, type, ...rest }: KeyProps) {
  return (
    <button
      {...rest}
      type={type ?? 'button'}
      data-variant={variant}
      className={styles.key}
      aria-disabled={pending || undefined}
      aria-busy={pending || undefined}
      onClick={pending ? (press) => press.preventDefault() : onClick}
    >
      <span aria-live={pendingWords ? 'polite' : undefined}>{pending ? (pendingWords ?? children) : children}</span>
    </button>
  );
}

/** A key that goes to another page. */
export function LinkKey({ variant = 'main', href, children }: KeyLook & { href: string }) {
  return (
    <Link href={href} data-variant={variant} className={styles.key}>
      {children}
    </Link>
  );
}

/** Holds the keys of a page at thumb height, above the navigation. A main key and one other share a row where both have room; more of them stand under the main key. */
export function KeyBar({ children }: { children: ReactNode }) {
  return <MeasuredBar>{children}</MeasuredBar>;
}
