'use client';

import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, KeyBar } from '@/app/_ui/keys';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { PictureField } from '@/app/(shop)/_parts/acts/picture-field';
import styles from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/mix-card.module.css';
import type { LiftCard } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/lift-card';
import { pourLiftAction } from '@/app/(shop)/jobs/[id]/pours/actions';
import { sayLift } from '@/app/(shop)/jobs/[id]/pours/say-pour';
import { ProblemNote } from '@/app/(shop)/pull/_ui/problem-note';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { sayDate } from '@/shared/calendar/say-date';

export type PourFormProps = { card: LiftCard; room: string; today: CalendarDate; order: DateOrder; onBack: () => void };

/** The last step of a lift: the room as it is, a note, a photo; a reason where something is off. */
export function PourForm({ card, room: planned, today, order, onBack }: PourFormProps) {
  const { run, pending, problem } = useAct(pourLiftAction, { keepAs: `pour-${card.liftId}` });
  const [room, setRoom] = useState(planned);
  const [humidity, setHumidity] = useState('');
  const [note, setNote] = useState('');
  const [reason, setReason] = useState('');
  const [dayText, setDayText] = useState('');
  const [photo, setPhoto] = useState<File>();
  const isOff = card.batches.some(({ ratio }) => ratio && !ratio.within);
  const asksReason = isOff || problem?.fields?.reason !== undefined || reason !== '';
  const day = dayText.trim() === '' ? undefined : readTypedDate(dayText, { today, order, aim: 'past' });
  const on = day?.ok && day.value.precision === 'day' ? day.value.date : undefined;

  async function pour() {
    if (day && !on) return giveFeedback('error');
    const { pourId, nr } = card;
    const answered = await run({
      pourId,
      nr,
      room,
      humidity,
      note,
      reason,
      photo,
      happenedOn: on === today ? undefined : on,
    });
    if (!answered.ok) return giveFeedback('error');
    giveFeedback('use');
    onBack();
  }

  return (
    <form
      className={styles.stage}
      noValidate
      onSubmit={(submit) => {
        submit.preventDefault();
        void pour();
      }}
    >
      <div className={styles.narrow}>
        <TextField
          label="The room now"
          hint="As the thermometer by the form shows it."
          value={room}
          onChange={setRoom}
          error={problem?.fields?.room}
        />
        <TextField
          label="Humidity, %"
          optional
          inputMode="decimal"
          value={humidity}
          onChange={setHumidity}
          error={problem?.fields?.humidity}
        />
        {asksReason ? (
          <TextField
            label="Why is it poured all the same?"
            hint={isOff ? 'The ratio is off: it would stay soft. Add what is missing if you can.' : undefined}
            lines={3}
            value={reason}
            onChange={setReason}
            maxLength={1000}
            error={problem?.fields?.reason}
          />
        ) : null}
        <TextField label="Note" optional lines={3} value={note} onChange={setNote} maxLength={1000} />
        <PictureField
          label="Photo"
          optional
          hint="The form as it was poured."
          onChange={setPhoto}
          error={problem?.fields?.photo}
        />
        <DateTextField
          label="Poured on"
          hint={`Empty for today, ${sayDate(today, { order })}.`}
          optional
          today={today}
          order={order}
          aim="past"
          value={dayText}
          onChange={(text) => setDayText(text)}
          error={problem?.fields?.happenedOn}
        />
        <ProblemNote problem={problem} />
      </div>
      <KeyBar>
        <Key type="submit" pending={pending} pendingWords="Writing into the book">
          {sayLift(card.nr)} is poured
        </Key>
        <Key variant="ghost" onClick={onBack}>
          Back to the card
        </Key>
      </KeyBar>
    </form>
  );
}
