'use client';

import { useAct } from '@/app/_ui/act/use-act';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import styles from '@/app/(shop)/pieces/[label]/marks/_ui/marks.module.css';
import { confirmMarksAction } from '@/app/(shop)/pieces/[label]/marks/actions';
import { sayMarksOfBefore } from '@/app/(shop)/pieces/[label]/marks/say-marks-of-before';

/** Marks keep their distances from the line and its start; where that line was laid anew, they may lie on other wood. */
export function MarksOfBefore({ label, shapeId, count }: { label: string; shapeId: number; count: number }) {
  const { run, pending, problem } = useAct(confirmMarksAction);
  const say = useNotice();
  async function confirm() {
    const answer = await run({ label, shapeId });
    if (answer.ok) say({ words: 'The book takes them to lie where they are drawn.' });
  }
  return (
    <div className={styles.before} role="status">
      <p>{sayMarksOfBefore(count)} Change or take off what does not lie where it is on the wood.</p>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key variant="ghost" onClick={() => void confirm()} pending={pending} pendingWords="Writing">
        {count === 1 ? 'It lies where it should' : 'They lie where they should'}
      </Key>
    </div>
  );
}
