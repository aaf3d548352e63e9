'use client';

import { useState } from 'react';
import type { StepLine } from '@/app/_server/timeline/read-steps';
import { useAct } from '@/app/_ui/act/use-act';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { type PartChoice, PartField } from '@/app/(shop)/jobs/[id]/_ui/part-field';
import styles from '@/app/(shop)/jobs/[id]/_ui/time-line.module.css';
import { setStepPartAction } from '@/app/(shop)/jobs/[id]/actions';

/** Says which part of the job a step is for. A step of a pour takes the whole pour along, and says so first. */
export function StepPart({ step, parts }: { step: StepLine; parts: readonly PartChoice[] }) {
  const { run, pending, problem } = useAct(setStepPartAction);
  const say = useNotice();
  const [partId, setPartId] = useState(step.partId);
  if (parts.length === 0) return null;

  async function write() {
    const answered = await run({ stepId: step.id, partId });
    if (!answered.ok) return giveFeedback('error');
    const { name, part } = answered.answer;
    say({ words: `${name} is for ${part ?? 'the whole job'} now. The history can put it back.` });
  }

  return (
    <div className={styles.ofPart}>
      <PartField
        label={`Part that ${step.name} is for`}
        hint={
          step.pourId === null
            ? 'It waits for that part and for the whole job. The whole job waits for every part.'
            : 'The whole pour goes along: its lifts, its demoulding and its cure.'
        }
        parts={parts}
        value={partId}
        onChange={setPartId}
      />
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <div className={styles.keys}>
        <Key
          variant="ghost"
          pending={pending}
          pendingWords="Writing"
          disabled={partId === step.partId}
          onClick={() => void write()}
        >
          Write which part it is for
        </Key>
      </div>
    </div>
  );
}
