'use client';

import { useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { SelectField } from '@/app/_ui/field/select-field';
import { Fold } from '@/app/_ui/fold';
import { LinkKey } from '@/app/_ui/keys';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { PairWarning } from '@/app/(shop)/pieces/_ui/pair-warning';
import { giveAction } from '@/app/(shop)/pieces/actions';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';

export interface GiveActProps {
  label: OwnLabelCode;
  jobs: readonly { id: number; name: string }[];
  promisedTo: { id: number; name: string } | null;
  /** The other half of its pair. */
  pairedWith: { label: OwnLabelCode; inStock: boolean } | null;
}

/** Promises a piece to a job so that no other gets it, takes it into the job, or frees it. */
export function GiveAct({ label, jobs, promisedTo, pairedWith }: GiveActProps) {
  const [way, setWay] = useState(promisedTo ? 'take' : 'promise');
  const [jobId, setJobId] = useState(promisedTo ? String(promisedTo.id) : '');
  const job = jobs.find((one) => String(one.id) === jobId) ?? promisedTo;
  const title = promisedTo ? 'Take or free it' : 'Promise it to a job';
  if (jobs.length === 0 && !promisedTo) {
    return (
      <Fold group="act" title={title} now="no job is open">
        <LinkKey variant="ghost" href="/jobs">
          Take on a job first
        </LinkKey>
      </Fold>
    );
  }
  const words =
    way === 'free'
      ? `Free it from ${promisedTo?.name}`
      : way === 'take'
        ? `Take it into ${job?.name ?? 'the job'}`
        : `Promise it to ${job?.name ?? 'the job'}`;
  return (
    <Fold group="act" title={title} now={promisedTo ? `promised to ${promisedTo.name}` : 'promised to nobody'}>
      <ActForm
        action={giveAction}
        input={{ label, act: way, jobId: way === 'free' || jobId === '' ? undefined : Number(jobId) }}
        words={words}
        done={
          way === 'free'
            ? 'It is free again.'
            : way === 'take'
              ? `It is taken into ${job?.name}: it leaves the shelf.`
              : `It is promised to ${job?.name}.`
        }
      >
        {(errors) => (
          <>
            <PairWarning line={{ label, pairedWith }} what="give" />
            <ChoiceChips
              label="What shall it be?"
              options={
                promisedTo
                  ? [
                      { value: 'take', label: 'Take it', hint: 'it leaves the shelf' },
                      { value: 'free', label: 'Free it' },
                    ]
                  : [
                      { value: 'promise', label: 'Promise it', hint: 'it stays on the shelf' },
                      { value: 'take', label: 'Take it', hint: 'it leaves the shelf' },
                    ]
              }
              value={way}
              onChange={setWay}
            />
            {promisedTo ? null : (
              <SelectField
                label="Job"
                none="Choose a job"
                options={jobs.map((one) => ({ value: String(one.id), label: one.name }))}
                value={jobId}
                onChange={setJobId}
                error={errors.jobId}
              />
            )}
          </>
        )}
      </ActForm>
    </Fold>
  );
}
