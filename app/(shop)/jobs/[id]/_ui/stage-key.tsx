'use client';

import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { STAGE_WORDS } from '@/app/(shop)/jobs/_ui/say-job';
import styles from '@/app/(shop)/jobs/[id]/_ui/job.module.css';
import { setStageAction } from '@/app/(shop)/jobs/[id]/actions';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { JOB_STAGES, type JobStage, stagesFrom } from '@/shared/timeline/job-stage';

const GO: Record<JobStage, string> = {
  asked: 'Back to asked for',
  quoted: 'It is quoted',
  agreed: 'It is agreed',
  making: 'Making begins',
  curing: 'It cures now',
  ready: 'It is ready',
  delivered: 'It is delivered',
  dropped: 'Drop the job',
};

const GO_BACK: Partial<Record<JobStage, string>> = {
  quoted: 'Back to quoted',
  agreed: 'Back to agreed',
  making: 'Back to making',
  curing: 'Back to curing',
  ready: 'Back to ready: it is not delivered',
};

const WAY: readonly JobStage[] = JOB_STAGES.filter((stage) => stage !== 'dropped');

/** Where the job stands on its way, and the keys that move it on. What frees stock is asked twice. */
export function StageKey({
  jobId,
  name,
  stage,
  promised,
}: {
  jobId: number;
  name: string;
  stage: JobStage;
  /** How many things are promised to it and not used. */
  promised: number;
}) {
  const { run, pending, problem, forget } = useAct(setStageAction);
  const say = useNotice();
  const [asked, setAsked] = useState<JobStage>();
  const [reason, setReason] = useState('');
  const at = WAY.indexOf(stage);
  const held = problem?.code === 'cure-hold';

  async function go(to: JobStage) {
    const answered = await run({ jobId, stage: to, reason });
    if (!answered.ok) {
      setAsked(to);
      return giveFeedback('error');
    }
    setAsked(undefined);
    setReason('');
    const { freed } = answered.answer;
    const labels = freed.map((label) => printOwnLabel(label as OwnLabelCode)).join(', ');
    say({
      words: `${name}: ${STAGE_WORDS[to].toLowerCase()}.${labels ? ` Free again: ${labels}.` : ''}`,
    });
  }

  const press = (to: JobStage) => {
    forget();
    setReason('');
    if (to === 'dropped' || (to === 'delivered' && promised > 0)) setAsked(to);
    else void go(to);
  };
  const words = (to: JobStage) => (WAY.indexOf(to) < at && to !== 'dropped' ? GO_BACK[to] : undefined) ?? GO[to];
  const [first, ...others] = stagesFrom(stage);

  return (
    <div>
      <ol className={styles.way} aria-label="Where it stands">
        {(stage === 'dropped' ? [...WAY, 'dropped' as const] : WAY).map((each) => (
          <li
            key={each}
            data-past={(stage !== 'dropped' && WAY.indexOf(each) < at) || undefined}
            aria-current={each === stage ? 'step' : undefined}
          >
            {STAGE_WORDS[each]}
          </li>
        ))}
      </ol>
      {asked ? (
        <div className={styles.asked}>
          {held ? null : (
            <p role="status">
              {promised === 0
                ? 'Nothing is promised to it any more.'
                : `${promised === 1 ? 'One thing' : `${promised} things`} promised to it and not used will be free again.`}{' '}
              What was used stays written.
            </p>
          )}
          {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
          {held || asked === 'dropped' ? (
            <TextField
              label={held ? 'Why it goes on all the same' : 'Why it is dropped'}
              optional={!held}
              value={reason}
              onChange={setReason}
              maxLength={500}
            />
          ) : null}
          <div className={styles.keys}>
            <Key
              variant={held ? 'stop' : 'main'}
              pending={pending}
              pendingWords="Writing into the book"
              onClick={() => void go(asked)}
            >
              {held ? `${words(asked)} all the same` : `Yes: ${words(asked).toLowerCase()}`}
            </Key>
            <Key
              variant="ghost"
              onClick={() => {
                setAsked(undefined);
                forget();
              }}
            >
              Leave it at {STAGE_WORDS[stage].toLowerCase()}
            </Key>
          </div>
        </div>
      ) : (
        <>
          <div className={styles.keys}>
            {first ? (
              <Key pending={pending} pendingWords="Writing into the book" onClick={() => press(first)}>
                {words(first)}
              </Key>
            ) : null}
          </div>
          <Fold title="Another stage">
            <div className={styles.keys}>
              {others.map((to) => (
                <Key key={to} variant="ghost" onClick={() => press(to)}>
                  {words(to)}
                </Key>
              ))}
            </div>
          </Fold>
        </>
      )}
    </div>
  );
}
