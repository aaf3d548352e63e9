'use client';

import { useState } from 'react';
import type { SaidOfBelow } from '@/app/_server/pours/join-below';
import { useAct } from '@/app/_ui/act/use-act';
import { CheckChips } from '@/app/_ui/field/check-chips';
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
import type { JoinNow } from '@/shared/pour/join-at';

export type PourFormProps = {
  card: LiftCard;
  room: string;
  /** How it joins the lift below now, and what was said of that on the card. */
  joins: JoinNow | undefined;
  said: SaidOfBelow;
  today: CalendarDate;
  order: DateOrder;
  onBack: () => void;
};

/** The last step of a lift: the room as it is, a note, a photo; a reason where something is off. */
export function PourForm({ card, room: seen, joins, said, today, order, onBack }: PourFormProps) {
  const { run, pending, problem } = useAct(pourLiftAction, { keepAs: `pour-${card.liftId}` });
  const [room, setRoom] = useState(seen);
  const [humidity, setHumidity] = useState('');
  const [note, setNote] = useState('');
  const [reason, setReason] = useState(said.early ?? '');
  const [sanded, setSanded] = useState(said.sanded ?? false);
  const [dayText, setDayText] = useState('');
  const [photo, setPhoto] = useState<File>();
  const isOff = card.batches.some(({ ratio }) => ratio && !ratio.within);
  const isShort = card.batches.some(({ parts }) => parts.some((part) => part.isOff));
  const isEarly = joins === 'too-early' && !card.said.early;
  const asksReason = isOff || isShort || isEarly || problem?.fields?.reason !== undefined || reason !== '';
  const asksSanded = !card.said.sanded && (joins === 'sand-first' || problem?.fields?.sanded !== undefined);
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
      sanded,
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
        {asksSanded && card.on ? (
          <CheckChips
            label={`${sayLift(card.on.nr)} below`}
            options={[{ value: 'sanded', label: 'It is sanded and wiped clean' }]}
            values={sanded ? ['sanded'] : []}
            onChange={(values) => setSanded(values.length > 0)}
            error={problem?.fields?.sanded}
          />
        ) : null}
        {asksReason ? (
          <TextField
            label="Why is it poured all the same?"
            hint={
              [
                isOff ? 'The ratio is off: it would stay soft. Add what is missing if you can.' : '',
                isShort ? 'It is not as much as was planned.' : '',
                isEarly ? 'The lift below is too fresh by the sheet.' : '',
              ]
                .filter(Boolean)
                .join(' ') || undefined
            }
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
