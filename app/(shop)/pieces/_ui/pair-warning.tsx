import Link from 'next/link';
import styles from '@/app/(shop)/pieces/_ui/pair.module.css';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { pairSplitBy } from '@/shared/wood/pair-split-by';

const WORDS = {
  cut: 'Cut alone, it no longer mirrors the other.',
  give: 'Given away alone, the pair is split.',
} as const;

export interface PairWarningProps {
  line: { label: OwnLabelCode; pairedWith: { label: OwnLabelCode; inStock: boolean } | null };
  what: keyof typeof WORDS;
}

/** Says before it is done that one half of a bookmatched pair would go without the other. */
export function PairWarning({ line, what }: PairWarningProps) {
  const [split] = pairSplitBy([line]);
  if (!split) return null;
  return (
    <p className={styles.warning}>
      It is one half of a bookmatched pair with{' '}
      <Link href={`/pieces/${split.stays}`}>{printOwnLabel(split.stays)}</Link>. {WORDS[what]}
    </p>
  );
}
