import type { ReactNode } from 'react';
import { ReasonList } from '@/app/_ui/verdict/reason-list';
import { VerdictPanel } from '@/app/_ui/verdict/verdict-panel';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';
import type { PieceVerdict } from '@/shared/wood/judge-piece';
import { sayPieceReason } from '@/shared/wood/say-piece-reason';

const FINE = 'Dry enough when last read, and nothing is wrong with it.';
const FINE_SHEET = 'Made dry, and nothing is wrong with it.';

/** Whether a piece may go to a job today, its picture, then every reason and what to do about it. */
export function PieceVerdictToday({
  verdict,
  gone,
  isSheet = false,
  children,
}: {
  verdict: PieceVerdict;
  gone: boolean;
  /** A sheet is made dry: it was not read. */
  isSheet?: boolean;
  children?: ReactNode;
}) {
  if (gone) {
    return (
      <>
        <p className={styles.gone}>It is no longer in the shop. The history says where it went.</p>
        {children}
      </>
    );
  }
  const said = verdict.reasons.map((reason) => ({ reason, ...sayPieceReason(reason) }));
  return (
    <>
      <VerdictPanel
        word={verdict.word}
        headline={[said[0]?.says ?? (isSheet ? FINE_SHEET : FINE)]}
        size="small"
        fresh={false}
      />
      <p className={styles.after}>For a job today. The meter in the wood decides, on the day you cut.</p>
      {children}
      {said.length > 0 ? (
        <ReasonList
          reasons={said.map(({ reason, says, todo }) => ({
            id: reason.code,
            word: reason.weight,
            sentence: says,
            toDo: todo,
          }))}
        />
      ) : null}
    </>
  );
}
