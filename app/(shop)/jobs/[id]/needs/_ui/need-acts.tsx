'use client';

import { useAct } from '@/app/_ui/act/use-act';
import { Fold } from '@/app/_ui/fold';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { NeedForm, type NeedFormProps } from '@/app/(shop)/jobs/[id]/needs/_ui/need-form';
import styles from '@/app/(shop)/jobs/[id]/needs/_ui/needs.module.css';
import { removeNeedAction } from '@/app/(shop)/jobs/[id]/needs/actions';
import type { TypedNeed } from '@/app/(shop)/jobs/[id]/needs/typed-need';

type NeedActsProps = Omit<NeedFormProps, 'change'> & {
  needId: number;
  typed: TypedNeed;
  /** Which need it is, where there are several of one thing. */
  which: string;
};

/** Changes a need, or takes it off. */
export function NeedActs({ needId, typed, which, ...form }: NeedActsProps) {
  const { run, pending, problem } = useAct(removeNeedAction);
  const say = useNotice();
  async function remove() {
    const answered = await run({ needId });
    if (answered.ok) say({ words: `${answered.answer.words} is off the list.` });
  }
  return (
    <Fold title="Change it or take it off" now={which || undefined}>
      {/* What is typed goes with the need as it was: changed, it is another. */}
      <NeedForm key={needId} {...form} change={{ needId, typed }} />
      <div className={styles.acts}>
        {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
        <Key variant="stop" pending={pending} pendingWords="Taking it off" onClick={() => void remove()}>
          Take this need off
        </Key>
      </div>
    </Fold>
  );
}
