import { ReasonList } from '@/app/_ui/verdict/reason-list';
import { VerdictPanel } from '@/app/_ui/verdict/verdict-panel';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';
import type { PieceVerdict } from '@/shared/wood/judge-piece';
import { sayPieceReason } from '@/shared/wood/say-piece-reason';

/** Whether a piece may go to a job today, with every reason and what to do about it. */
export function PieceVerdictToday({ verdict, gone }: { verdict: PieceVerdict; gone: boolean }) {
  if (gone) return <p className={styles.gone}>It is no longer in the shop. The history says where it went.</p>;
  const said = verdict.reasons.map((reason) => ({ reason, ...sayPieceReason(reason) }));
  return (
    <>
      <VerdictPanel
        word={verdict.word}
        headline={[said[0]?.says ?? 'Dry enough when last read, and nothing is wrong with it.']}
        size="small"
        fresh={false}
      />
      <p className={styles.after}>For a job today. The meter in the wood decides, on the day you cut.</p>
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
