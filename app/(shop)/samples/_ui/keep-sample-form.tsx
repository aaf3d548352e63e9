'use client';

import { useState } from 'react';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { keepSampleAction } from '@/app/(shop)/samples/actions';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';

type LotChoice = { lotId: number; words: string };

export interface KeepSampleFormProps {
  lifts: readonly { liftId: number; words: string }[];
  /** How many that were poured before these are left out. */
  olderLifts: number;
  lots: Readonly<Record<'A' | 'B', readonly LotChoice[]>>;
  /** The lift it is of, where the page was asked for from one. */
  lift?: string | undefined;
  places: readonly { label: string; says: string }[];
  today: CalendarDate;
  order: DateOrder;
}

const lotOptions = (lots: readonly LotChoice[]) =>
  lots.map(({ lotId, words }) => ({ value: String(lotId), label: words }));

/** Puts a cured piece on the shelf: of a lift, or of two lots that were mixed. */
export function KeepSampleForm({ lifts, olderLifts, lots, lift = '', places, today, order }: KeepSampleFormProps) {
  const known = lifts.find(({ liftId }) => String(liftId) === lift);
  const fresh = {
    name: known?.words ?? '',
    lift: known ? lift : '',
    lotA: '',
    lotB: '',
    place: '',
    madeOn: sayDate(today, { order }),
    days: '30',
    note: '',
  };
  const [typed, setTyped] = useState(fresh);
  const set = (field: keyof typeof fresh) => (value: string) => setTyped((before) => ({ ...before, [field]: value }));
  const { name, madeOn, days, note } = typed;
  const number = (text: string) => (text ? Number(text) : undefined);
  const ofLift = typed.lift !== '';
  return (
    <ActForm
      action={keepSampleAction}
      input={{
        name,
        liftId: number(typed.lift),
        lotAId: ofLift ? undefined : number(typed.lotA),
        lotBId: ofLift ? undefined : number(typed.lotB),
        placeLabel: typed.place || undefined,
        madeOn,
        days,
        note,
      }}
      words={name.trim() ? `Keep ${name.trim()}` : 'Keep it'}
      done="The sample is on the shelf in the book."
      onDone={() => setTyped({ ...fresh, name: '', lift: '' })}
    >
      {(errors) => (
        <>
          <TextField label="Name" value={name} onChange={set('name')} maxLength={120} error={errors.name} />
          {lifts.length > 0 ? (
            <SelectField
              label="Of which lift"
              none="Of no lift in the book"
              hint={
                olderLifts > 0
                  ? `The newest are here. ${olderLifts} older ${olderLifts === 1 ? 'one is' : 'ones are'} not: come from the page of its pour.`
                  : undefined
              }
              options={lifts.map(({ liftId, words }) => ({ value: String(liftId), label: words }))}
              value={typed.lift}
              onChange={set('lift')}
              error={errors.liftId}
            />
          ) : null}
          {ofLift ? null : (
            <>
              <SelectField
                label="Lot of part A"
                none="Not known"
                options={lotOptions(lots.A)}
                value={typed.lotA}
                onChange={set('lotA')}
                error={lifts.length === 0 ? errors.liftId : undefined}
              />
              <SelectField
                label="Lot of part B"
                none="Not known"
                options={lotOptions(lots.B)}
                value={typed.lotB}
                onChange={set('lotB')}
              />
            </>
          )}
          {places.length > 0 ? (
            <SelectField
              label="Where it is kept"
              none="No place yet"
              options={places.map(({ label, says }) => ({ value: label, label: says }))}
              value={typed.place}
              onChange={set('place')}
              error={errors.placeLabel}
            />
          ) : null}
          <DateTextField
            label="Made on"
            today={today}
            order={order}
            aim="past"
            value={madeOn}
            onChange={set('madeOn')}
            error={errors.madeOn}
          />
          <TextField
            label="Look at it after so many days"
            hint="Watch asks for it then. 30, 90 and 365 are usual; leave it empty to be asked never."
            optional
            value={days}
            onChange={set('days')}
            maxLength={10}
            error={errors.days ?? errors.lookOn}
          />
          <TextField
            label="Note"
            optional
            lines={2}
            value={note}
            onChange={set('note')}
            maxLength={500}
            error={errors.note}
          />
        </>
      )}
    </ActForm>
  );
}
