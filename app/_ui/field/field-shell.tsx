import type { ReactNode } from 'react';
import styles from '@/app/_ui/field/field.module.css';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';

/** What every field of one line shares. */
export interface FieldWords {
  label: string;
  /** One sentence on what belongs here, shown before anything goes wrong. */
  hint?: ReactNode;
  /** What is wrong and what to type instead. */
  error?: string;
  /** Adds "can stay empty" to the label. Fields are otherwise needed. */
  optional?: boolean;
}

/** What was understood from what was typed. `null` says nothing. */
export type Echo = { readonly ok: boolean; readonly says: ReactNode } | null;

const ids = (id: string) => ({ hint: `${id}-hint`, error: `${id}-error`, echo: `${id}-echo` });

/** The ids that describe the field, for its `aria-describedby`. */
export function describedBy(id: string, { hint, error }: FieldWords, echoed = false): string | undefined {
  const parts = [hint ? ids(id).hint : '', error ? ids(id).error : '', echoed ? ids(id).echo : ''];
  return parts.filter(Boolean).join(' ') || undefined;
}

/** Big label and hint above the field; the error and the echo of what was understood right under it. */
export function FieldShell({
  id,
  label,
  hint,
  error,
  optional,
  echo,
  children,
}: FieldWords & { id: string; echo?: Echo | undefined; children: ReactNode }) {
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={styles.label}>
        {label}
        {optional ? <span className={styles.optional}> can stay empty</span> : null}
      </label>
      {hint ? (
        <p id={ids(id).hint} className={styles.hint}>
          {hint}
        </p>
      ) : null}
      {children}
      {error ? <FieldError id={ids(id).error}>{error}</FieldError> : null}
      {echo !== undefined ? (
        <div id={ids(id).echo} className={styles.echo} data-ok={echo?.ok} aria-live="polite">
          {/* A question with its answers stays beside the error that asks for them. */}
          {error && typeof echo?.says === 'string' ? null : echo?.says}
        </div>
      ) : null}
    </div>
  );
}

export function FieldError({ id, children }: { id: string; children: string }) {
  return (
    <p id={id} className={styles.error}>
      <VerdictMark word="stop" size={18} />
      <span>{children}</span>
    </p>
  );
}
