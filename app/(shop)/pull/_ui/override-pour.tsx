'use client';

import { useId, useState } from 'react';
import type { PullReply } from '@/app/_server/pull/scan-to-pull';
import { useAct } from '@/app/_ui/act/use-act';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { FieldError } from '@/app/_ui/field/field-shell';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, KeyBar } from '@/app/_ui/keys';
import { usePhotoCheck } from '@/app/_ui/photos/use-photo-check';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import type { Bench } from '@/app/(shop)/pull/_ui/bench';
import { ContainerFacts } from '@/app/(shop)/pull/_ui/container-facts';
import { ProblemNote } from '@/app/(shop)/pull/_ui/problem-note';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import { StepHead } from '@/app/(shop)/pull/_ui/step-head';
import { testPourAction } from '@/app/(shop)/pull/actions';
import { daysBetween } from '@/shared/calendar/days-between';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { sayDate } from '@/shared/calendar/say-date';
import { sayDays } from '@/shared/calendar/say-days';
import { MOST_POUR_DAYS, type PourSince, testPourSince } from '@/shared/shelf-life/test-pour-since';

export type OverridePourProps = { bench: Bench; answer: Extract<PullReply, { kind: 'container' }> };

/** The first step of using it anyway: a test pour that passed, already in the book or recorded now. */
export function OverridePour({ bench, answer }: OverridePourProps) {
  const { testPour, today } = answer;
  const [newer, setNewer] = useState(false);
  const stands = testPour?.passed && testPour.madeOn >= sinceOf(answer).day;
  if (newer || !stands) return <RecordPour bench={bench} answer={answer} onKeep={() => setNewer(false)} />;
  return (
    <div className={styles.stage}>
      <div className={styles.narrow}>
        <StepHead step={1} words="The test pour" />
        <ContainerFacts line={answer.line} units={bench.units} />
        <div className={styles.pour}>
          <p className={styles.pourHead}>
            <VerdictMark word="use" size={24} />
            <b>
              Passed on {sayDate(testPour.madeOn, { order: bench.dateOrder, today })}
              {testPour.madeOn === today ? ', today' : `, ${sayDays(daysBetween(testPour.madeOn, today))} ago`}
            </b>
          </p>
          {testPour.together ? <p>Poured together with {testPour.together}.</p> : null}
          {testPour.method ? <p>{testPour.method}</p> : null}
          {testPour.note ? <p>{testPour.note}</p> : null}
          {testPour.photo ? (
            <a href={`/photos/${testPour.photo}`}>
              {/* biome-ignore lint/performance/noImgElement: the picture is already cut to size by the store */}
              <img className={styles.pourPhoto} src={`/photos/${testPour.photo}`} alt="The test pour" />
            </a>
          ) : null}
        </div>
      </div>
      <KeyBar>
        <Key onClick={() => bench.patch({ step: 'reason' })}>It passed: go on to the reason</Key>
        <Key variant="ghost" onClick={() => setNewer(true)}>
          Record a newer one
        </Key>
        <Key variant="ghost" onClick={() => bench.patch({ step: 'answer', overriding: false })}>
          Do not use it
        </Key>
      </KeyBar>
    </div>
  );
}

const SINCE: Record<PourSince['because'], string> = {
  'past-limit': 'It was still within its limit then, so that pour says nothing of it past the limit.',
  opened: 'That was before this container was opened.',
  failed: 'It failed an inspection after that pour.',
  age: `A pour older than ${MOST_POUR_DAYS} days says little of the material now.`,
};

function sinceOf({ verdict, line, today }: OverridePourProps['answer']): PourSince {
  return testPourSince(verdict, { openedOn: line.candidate.container.opened?.on, today });
}

function RecordPour({ bench, answer, onKeep }: OverridePourProps & { onKeep: () => void }) {
  const { draft, patch, units } = bench;
  const { line, testPour, today } = answer;
  const { run, pending, problem } = useAct(testPourAction);
  const [photo, setPhoto] = useState<File>();
  const picture = usePhotoCheck(setPhoto);
  const [faults, setFaults] = useState<Record<string, string>>({});
  const pour = draft.pour;
  const edit = (change: Partial<typeof pour>) => patch({ pour: { ...pour, ...change } });
  const since = sinceOf(answer);
  const stands = testPour?.passed && testPour.madeOn >= since.day;
  const day = readTypedDate(pour.dayText || sayDate(today, { order: bench.dateOrder }), {
    today,
    order: bench.dateOrder,
    aim: 'past',
  });

  async function record() {
    const found: Record<string, string> = {};
    if (!day.ok || day.value.ambiguous || day.value.precision !== 'day') found.madeOn = 'Give the day it was poured.';
    if (pour.passed === undefined) found.passed = 'Say whether it passed.';
    if (!photo && pour.note.trim() === '') found.note = 'Write how it came out, or add a photo.';
    if (picture.wrong) found.photo = picture.wrong;
    setFaults(found);
    if (Object.keys(found).length > 0 || !day.ok) return giveFeedback('error');
    const { passed } = pour;
    const answered = await run({
      label: line.label,
      madeOn: day.value.date,
      passed,
      method: pour.method,
      note: pour.note,
      photo,
    });
    if (!answered.ok) return giveFeedback('error');
    const empty = { dayText: '', method: '', note: '' };
    // One that passed too early stays in the book, and this step asks for a newer one.
    const enough = passed && day.value.date >= since.day;
    bench.ask({ pour: empty, step: enough ? 'reason' : passed ? 'pour' : 'answer', overriding: passed });
  }

  /** A fault is said until it is put right, not until the key is pressed again. */
  const mended: Record<string, boolean> = {
    madeOn: day.ok && !day.value.ambiguous && day.value.precision === 'day',
    passed: pour.passed !== undefined,
    photo: picture.wrong === undefined,
    note: photo !== undefined || pour.note.trim() !== '',
  };
  const error = (name: string) => (mended[name] ? undefined : faults[name]) ?? problem?.fields?.[name];
  const photoId = useId();
  const wrongPhoto = picture.wrong ?? error('photo');
  return (
    <form
      className={styles.stage}
      onSubmit={(submit) => {
        submit.preventDefault();
        void record();
      }}
    >
      <div className={styles.narrow}>
        <StepHead step={1} words="A test pour" />
        <p className={styles.soft}>
          {testPour && !testPour.passed
            ? `The last test pour, on ${sayDate(testPour.madeOn, { order: bench.dateOrder, today })}, failed. A later one that passes is needed.`
            : testPour && !stands
              ? `The last test pour, on ${sayDate(testPour.madeOn, { order: bench.dateOrder, today })}, passed. ${SINCE[since.because]} Record one poured on ${sayDate(since.day, { order: bench.dateOrder, today })} or later.`
              : testPour
                ? 'A newer pour says more of the material as it is now.'
                : 'No test pour of it is in the book. Pour a little in a cup, let it cure as the data sheet says, then record how it came out.'}
        </p>
        <ContainerFacts line={line} units={units} />
        <ChoiceChips
          label="How did it come out?"
          options={[
            { value: 'passed', label: 'Passed', hint: 'hard and clear all through' },
            { value: 'failed', label: 'Failed', hint: 'soft, tacky or cloudy' },
          ]}
          value={pour.passed === undefined ? '' : pour.passed ? 'passed' : 'failed'}
          onChange={(value) => edit({ passed: value === 'passed' })}
          error={error('passed')}
        />
        <DateTextField
          label="Poured on"
          today={today}
          order={bench.dateOrder}
          aim="past"
          value={pour.dayText || sayDate(today, { order: bench.dateOrder })}
          onChange={(dayText) => edit({ dayText })}
          error={error('madeOn')}
        />
        <TextField
          label="How it was poured"
          hint="How much, how warm, how long it cured."
          optional
          value={pour.method}
          onChange={(method) => edit({ method })}
          maxLength={1000}
          error={error('method')}
        />
        <TextField
          label="What was seen"
          hint="A note or a photo, or both."
          lines={3}
          value={pour.note}
          onChange={(note) => edit({ note })}
          maxLength={1000}
          error={error('note')}
        />
        <label className={styles.photo}>
          <span>{photo ? `Photo: ${photo.name || 'taken'}` : 'Add a photo of it'}</span>
          <input
            type="file"
            accept="image/*"
            capture="environment"
            className="unseen"
            aria-invalid={wrongPhoto ? true : undefined}
            aria-describedby={wrongPhoto ? `${photoId}-error` : undefined}
            onChange={(change) => void picture.take(change.currentTarget.files?.[0])}
          />
        </label>
        {wrongPhoto ? <FieldError id={`${photoId}-error`}>{wrongPhoto}</FieldError> : null}
        <ProblemNote problem={problem} />
      </div>
      <KeyBar>
        <Key type="submit" pending={pending} pendingWords="Writing into the book">
          {pour.passed === undefined
            ? 'Record the test pour'
            : pour.passed
              ? 'Record that it passed'
              : 'Record that it failed'}
        </Key>
        <Key variant="ghost" onClick={() => (stands ? onKeep() : patch({ step: 'answer', overriding: false }))}>
          {stands ? 'Back to the earlier one' : 'Do not use it'}
        </Key>
      </KeyBar>
    </form>
  );
}
