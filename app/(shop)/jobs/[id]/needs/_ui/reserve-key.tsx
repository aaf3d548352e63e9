'use client';

import { useAct } from '@/app/_ui/act/use-act';
import { Key, type KeyVariant } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { reserveNeedsAction } from '@/app/(shop)/jobs/[id]/needs/actions';

export interface ReserveKeyProps {
  jobId: number;
  /** Only what these needs want; everything the job needs without them. */
  needIds?: readonly number[];
  variant?: KeyVariant;
  words: string;
}

/** Promises to the job what is free for it. Another who asked first is not overridden: the page shows what is left. */
export function ReserveKey({ jobId, needIds, variant, words }: ReserveKeyProps) {
  const { run, pending, problem } = useAct(reserveNeedsAction);
  const say = useNotice();
  async function press() {
    const answered = await run({ jobId, needIds });
    if (!answered.ok) return giveFeedback('error');
    const { promised, stillShort, job } = answered.answer;
    giveFeedback(stillShort.length ? 'care' : 'use');
    const things = promised.length === 1 ? '1 thing is' : `${promised.length} things are`;
    say({
      words: `${things} promised to ${job}. ${stillShort.length ? `${stillShort.map((each) => each.need).join(', ')} could not be had in full.` : 'Nothing is missing.'}`,
    });
  }
  return (
    <>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <Key variant={variant} pending={pending} pendingWords="Promising" onClick={() => void press()}>
        {words}
      </Key>
    </>
  );
}
