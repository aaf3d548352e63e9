'use client';

import { useState } from 'react';
import type { OtherLot } from '@/app/_server/stock/lots-of-other-part';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { inspectAction } from '@/app/(shop)/_parts/acts/actions';
import styles from '@/app/(shop)/_parts/acts/acts.module.css';
import { PictureField } from '@/app/(shop)/_parts/acts/picture-field';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';

export interface InspectActProps {
  lotId: number;
  /** The one container it speaks for; the whole lot without it. */
  containerLabel?: string;
  today: CalendarDate;
  order: DateOrder;
  /** Lots of the other part it can have been mixed with; none where it is no part of a system. */
  others?: readonly OtherLot[];
  /** The day a passed one is taken to hold until, with what that was computed from. */
  suggested?: { until: CalendarDate; says: string };
}

/** Records a look at the material or a small test pour, and until when a passed one is taken to hold. */
export function InspectAct({ lotId, containerLabel, others = [], today, order, suggested }: InspectActProps) {
  const fresh = {
    kind: 'inspection',
    madeOn: sayDate(today, { order }),
    outcome: '',
    validUntil: suggested ? sayDate(suggested.until, { order }) : '',
    method: '',
    note: '',
    pairLot: '',
    mass: '',
    temperature: '',
    minutes: '',
    result: '',
  };
  const [typed, setTyped] = useState(fresh);
  const [photo, setPhoto] = useState<File>();
  const [taken, setTaken] = useState(0);
  const set = (field: keyof typeof fresh) => (value: string) => setTyped((before) => ({ ...before, [field]: value }));
  const pour = typed.kind === 'test-pour';
  const { pairLot, ...sent } = typed;
  const thing = pour ? 'test pour' : 'inspection';
  return (
    <Fold group="act" title="Record an inspection or test pour">
      <ActForm
        action={inspectAction}
        input={{
          ...sent,
          lotId,
          containerLabel,
          outcome: typed.outcome || undefined,
          pairLotId: pour && pairLot ? Number(pairLot) : undefined,
          photo,
        }}
        words={typed.outcome === '' ? `Write the ${thing}` : `Write the ${thing}: ${typed.outcome}`}
        done={`The ${thing} is in the book.`}
        onDone={() => {
          setTyped(fresh);
          setPhoto(undefined);
          setTaken((count) => count + 1);
        }}
      >
        {(errors) => (
          <>
            <ChoiceChips
              label="What was done?"
              options={[
                { value: 'inspection', label: 'Looked at it' },
                { value: 'test-pour', label: 'Test pour' },
              ]}
              value={typed.kind}
              onChange={set('kind')}
            />
            <ChoiceChips
              label="How did it come out?"
              options={[
                { value: 'passed', label: 'Passed' },
                { value: 'failed', label: 'Failed' },
              ]}
              value={typed.outcome}
              onChange={set('outcome')}
              error={errors.outcome}
            />
            <DateTextField
              label="Made on"
              today={today}
              order={order}
              aim="past"
              value={typed.madeOn}
              onChange={set('madeOn')}
              error={errors.madeOn}
            />
            {typed.outcome === 'passed' ? (
              <DateTextField
                label="Holds until"
                hint={suggested?.says ?? 'Without a day it is kept in the history and extends nothing.'}
                optional
                today={today}
                order={order}
                aim="ahead"
                value={typed.validUntil}
                onChange={set('validUntil')}
                error={errors.validUntil}
              />
            ) : null}
            {pour && others.length > 0 ? (
              <SelectField
                label="Mixed with"
                hint={sayPair(typed.outcome, containerLabel)}
                optional
                none="Not said: it speaks for this one"
                options={others.map((each) => ({ value: String(each.lotId), label: each.words }))}
                value={typed.pairLot}
                onChange={set('pairLot')}
                error={errors.pairLotId}
              />
            ) : null}
            {pour ? (
              <div className={styles.row}>
                <TextField
                  label="How much"
                  hint="A usual test is 100 g in a small cup."
                  optional
                  value={typed.mass}
                  onChange={set('mass')}
                  maxLength={40}
                  error={errors.mass}
                />
                <TextField
                  label="Room"
                  optional
                  value={typed.temperature}
                  onChange={set('temperature')}
                  maxLength={40}
                  error={errors.temperature}
                />
                <TextField
                  label="Minutes"
                  hint="Until it gelled, or as long as it was watched."
                  optional
                  value={typed.minutes}
                  onChange={set('minutes')}
                  maxLength={10}
                  error={errors.minutes}
                />
              </div>
            ) : null}
            <TextField
              label="What was seen"
              optional
              value={typed.result}
              onChange={set('result')}
              maxLength={300}
              error={errors.result}
            />
            <TextField
              label="How"
              optional
              hint={pour ? 'Amounts, ratio, depth, temperature.' : 'Looked, stirred, drop on glass.'}
              value={typed.method}
              onChange={set('method')}
              maxLength={300}
              error={errors.method}
            />
            <TextField
              label="What came of it"
              optional={!pour}
              hint={pour ? 'A note or a photo: without one it cannot be relied on.' : undefined}
              lines={2}
              value={typed.note}
              onChange={set('note')}
              maxLength={1000}
              error={errors.note}
            />
            <PictureField key={taken} label="Photo" optional onChange={setPhoto} error={errors.photo} />
          </>
        )}
      </ActForm>
    </Fold>
  );
}

/** What a test pour of two lots together says of them. */
function sayPair(outcome: string, containerLabel: string | undefined): string {
  const own = containerLabel ? 'this container and that lot' : 'these two lots';
  if (outcome === 'failed') {
    return `Then ${own} are not to be mixed until they pass together, and each is in doubt until it passes with another.`;
  }
  return `Then it speaks for ${own} together and stands with both. It says nothing of either with a third.`;
}
