'use client';

import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { FitAnswers } from '@/app/(shop)/on-hand/fits/_ui/fit-answers';
import styles from '@/app/(shop)/on-hand/fits/_ui/fits.module.css';
import { useAllFits } from '@/app/(shop)/on-hand/fits/_ui/use-all-fits';
import type { FitsView } from '@/app/(shop)/on-hand/fits/fits-view';

interface FitsLiveProps {
  first: FitsView;
  /** The first answer covers only a part of the wood: the rest is looked at while it is read. */
  isPart: boolean;
  /** The question, as the address has it. */
  query: string;
  /** The job the top is for, where that is known. */
  jobId: number | undefined;
}

/** The answers; where there is much wood, the largest pieces first and all of it as soon as it was looked at. */
export function FitsLive({ first, isPart, query, jobId }: FitsLiveProps) {
  const { view, search, stop, again } = useAllFits(first, isPart, query);
  return (
    <>
      {search.state === 'looking' ? (
        <div className={styles.progress}>
          <p role="status">
            {search.of > 0
              ? `${search.done.toLocaleString('en')} of ${search.of.toLocaleString('en')} looked at. What is shown is the largest so far.`
              : 'Looking at the rest. What is shown is the largest so far.'}
          </p>
          <progress max={Math.max(1, search.of)} value={search.done} aria-label="How much was looked at" />
          <Key variant="ghost" onClick={stop}>
            Stop looking
          </Key>
        </div>
      ) : null}
      {search.state === 'stopped' ? (
        <div className={styles.progress}>
          <p role="status">Stopped. What is shown is the largest pieces only.</p>
          <Key variant="ghost" onClick={() => void again()}>
            Look at all of it
          </Key>
        </div>
      ) : null}
      {search.state === 'failed' ? (
        <PlainError
          happened={search.problem?.what ?? 'The book could not be reached, so not all of the wood was looked at.'}
          kept={search.problem?.kept ?? 'The question and the largest pieces are still here.'}
          toDo={search.problem?.todo ?? 'Come back into Wi-Fi and try again.'}
        >
          <Key variant="ghost" onClick={() => void again()}>
            Try again
          </Key>
        </PlainError>
      ) : null}
      <FitAnswers view={view} query={query} jobId={jobId} />
    </>
  );
}
