'use client';

import { useCallback, useEffect, useState } from 'react';
import type { SaidOfBelow } from '@/app/_server/pours/join-below';
import type { PromisedTin } from '@/app/_server/pours/promised-tins';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, KeyBar, LinkKey } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { recall, remember } from '@/app/_ui/scanner/device-memory';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import type { Scan } from '@/app/_ui/scanner/scan';
import { useScanHandler } from '@/app/_ui/scanner/scan-provider';
import { Scanner } from '@/app/_ui/scanner/scanner';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import { BatchFigures } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/batch-figures';
import { BelowNote } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/below-note';
import { InHand } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/in-hand';
import { LiftDone } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/lift-done';
import styles from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/mix-card.module.css';
import { PourForm } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/pour-form';
import { ToFetch } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/to-fetch';
import { type LiftCard, nextPart } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/lift-card';
import { mindLift } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/mind-lift';
import { isBelowReady } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/say-below';
import { scanAction } from '@/app/(shop)/jobs/[id]/pours/actions';
import { sayDay, sayLift } from '@/app/(shop)/jobs/[id]/pours/say-pour';
import type { Bench } from '@/app/(shop)/pull/_ui/bench';
import { ChooseContainer } from '@/app/(shop)/pull/_ui/choose-container';
import { OverridePour } from '@/app/(shop)/pull/_ui/override-pour';
import { OverrideReason } from '@/app/(shop)/pull/_ui/override-reason';
import { EMPTY_DRAFT, type PullDraft } from '@/app/(shop)/pull/_ui/pull-draft';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { joinAt } from '@/shared/pour/join-at';
import type { Problem } from '@/shared/result/answer';
import { parseTemperature } from '@/shared/units/parse-temperature';
import type { UnitSystem } from '@/shared/units/unit-system';

export type MixCardProps = {
  card: LiftCard;
  about: string;
  /** The room as it was planned. */
  room: string;
  /** What is promised to the job, to be fetched. */
  tins: readonly PromisedTin[];
  /** When the page was made, milliseconds since 1970. */
  now: number;
  today: CalendarDate;
  order: DateOrder;
  units: UnitSystem;
};

export type OpenSlot = { batch: number; part: 'A' | 'B'; more?: boolean };

const UNREACHED: Problem = {
  code: 'unreached',
  what: 'The book could not be reached, so this is not looked up.',
  kept: 'Whatever was weighed before is in the book.',
  todo: 'Come back into Wi-Fi and scan it again.',
};

/**
 * The card: big figures to weigh by, ticked as they are in; the scan and the verdict of each part; then the pouring. What
 * was weighed is in the book at once, so a card that is opened again shows it.
 */
export function MixCard({ card, about, room: planned, tins, now: made, today, order, units }: MixCardProps) {
  const [slot, setSlot] = useState<OpenSlot>();
  const [draft, setDraft] = useState<PullDraft>(EMPTY_DRAFT);
  const [asking, setAsking] = useState(false);
  const [problem, setProblem] = useState<Problem>();
  const [pouring, setPouring] = useState(false);
  const [said, setSaid] = useState<SaidOfBelow>({});
  const [isAsked, setIsAsked] = useState(false);
  const now = useNow(made);
  const [roomText, setRoomText] = useRoom(`${card.liftId}-${today}`, planned);
  const typedRoom = parseTemperature(roomText, { prefer: units });
  const room = typedRoom.ok && !card.poured ? typedRoom.value : card.room;
  const cautions = mindLift(card, room);
  const all: SaidOfBelow = {
    sanded: card.said.sanded || said.sanded,
    early: card.said.early ?? said.early,
  };
  const isReady = isBelowReady(card.on, now, all);
  const next = nextPart(card.batches);
  const mayWeigh = card.isOpen && !card.poured && card.below === null;
  const wanted = slot ?? next;

  const refuse = () => {
    setIsAsked(true);
    giveFeedback('error');
  };
  const drop = () => {
    setSlot(undefined);
    setDraft(EMPTY_DRAFT);
    setProblem(undefined);
  };

  const ask = useCallback(
    async (from: PullDraft, to: OpenSlot) => {
      const { code } = from;
      if (!code) return;
      setSlot(to);
      setProblem(undefined);
      setAsking(true);
      setDraft({ ...from, reply: undefined });
      const { pourId, nr } = card;
      const answered = await scanAction({
        pourId,
        nr,
        ...to,
        scan: { text: code.text, symbology: code.symbology },
      }).catch(() => undefined);
      setAsking(false);
      if (!answered?.ok) {
        giveFeedback(answered ? 'stop' : 'error');
        setDraft(EMPTY_DRAFT);
        setProblem(answered?.problem ?? UNREACHED);
        return;
      }
      const { reply } = answered;
      setDraft((now) => ({ ...now, reply }));
      if (reply.kind === 'container') giveFeedback(reply.verdict.word);
      else if (reply.kind === 'nothing') giveFeedback('error');
    },
    [card],
  );

  const scan = (read: Scan) => {
    if (!wanted || asking) return;
    if (!isReady) return refuse();
    void ask({ ...EMPTY_DRAFT, code: { text: read.text, symbology: read.symbology } }, wanted);
  };
  useScanHandler(scan, { enabled: mayWeigh && wanted !== undefined && !pouring });

  const day = card.lastLift > today ? card.lastLift : today;
  const bench: Bench = {
    goal: { jobId: card.jobId, name: card.job, purpose: card.purpose, day },
    day,
    today,
    units,
    dateOrder: order,
    draft,
    patch: (change) => setDraft((now) => ({ ...now, ...change })),
    ask: (change) => void (wanted && ask({ ...draft, ...change }, wanted)),
    turnTo: (label) => void (wanted && ask({ ...EMPTY_DRAFT, code: { text: label } }, wanted)),
    scanNext: () => {
      setDraft(EMPTY_DRAFT);
      setProblem(undefined);
    },
    changeDay: () => undefined,
    changeGoal: () => undefined,
  };
  const { reply, step } = draft;
  const trouble = problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null;

  if (slot && reply?.kind === 'container') {
    if (step === 'pour') return <OverridePour bench={bench} answer={reply} />;
    if (step === 'reason') return <OverrideReason bench={bench} answer={reply} />;
    return <InHand card={card} slot={slot} bench={bench} answer={reply} said={said} onWeighed={drop} onStop={drop} />;
  }
  if (slot && reply?.kind === 'choose') return <ChooseContainer bench={bench} reply={reply} />;
  if (slot) {
    return (
      <div className={styles.stage}>
        <div className={styles.narrow}>
          {trouble}
          {reply?.kind === 'nothing' ? (
            <PlainError happened={reply.what} kept="Nothing was written." toDo={reply.todo} />
          ) : null}
          <Scanner prompt={sayPrompt(card, slot)} onScan={scan} compact />
          {asking ? <p role="status">Looking it up…</p> : null}
        </div>
        <KeyBar>
          <Key variant="ghost" onClick={drop}>
            Back to the card
          </Key>
        </KeyBar>
      </div>
    );
  }
  if (pouring) {
    return (
      <PourForm
        card={card}
        room={roomText}
        joins={card.on ? joinAt(card.on, now).joins : undefined}
        said={said}
        today={today}
        order={order}
        onBack={() => setPouring(false)}
      />
    );
  }
  return (
    <div className={styles.card}>
      <p className={styles.about}>{about}</p>
      {card.poured ? (
        <LiftDone card={card} poured={card.poured} today={today} order={order} units={units} />
      ) : (
        <p className={styles.judged}>
          What goes in is judged for {sayDay(day, order, today)}, the day of the last lift.
        </p>
      )}
      {trouble}
      {card.on && !card.poured ? (
        <BelowNote
          below={card.on}
          nr={card.nr}
          now={now}
          before={card.said}
          said={said}
          onSay={setSaid}
          isAsked={isAsked}
        />
      ) : null}
      {card.poured ? null : (
        <div className={styles.room}>
          <TextField
            label="The room now"
            hint={`Planned for ${planned}. What is minded here and the clock go by it.`}
            value={roomText}
            onChange={setRoomText}
            error={typedRoom.ok ? undefined : 'That does not read as a temperature. Until it does, the plan’s counts.'}
          />
        </div>
      )}
      {cautions.length > 0 && !card.poured ? (
        <ul className={styles.cautions} aria-label="Mind">
          {cautions.map(({ code, words }) => (
            <li key={code}>
              <VerdictMark word="care" size={24} />
              <span>{words}</span>
            </li>
          ))}
        </ul>
      ) : null}
      <ToFetch tins={tins} units={units} />
      {card.batches.map((batch) => (
        <BatchFigures
          key={batch.batch}
          card={card}
          batch={batch}
          room={room}
          units={units}
          now={mayWeigh && next?.batch === batch.batch ? next.part : undefined}
          onAdd={mayWeigh ? (part) => setSlot({ batch: batch.batch, part, more: true }) : undefined}
        />
      ))}
      <p className={styles.defer}>
        Gloves, sleeves down, air moving. A bucket that gets hot goes outside, on stone. The data sheet goes before this
        card.
      </p>
      <KeyBar>
        {card.below !== null && !card.poured ? (
          <LinkKey href={`/jobs/${card.jobId}/pours/${card.pourId}/lifts/${card.below}`}>
            {sayLift(card.below)} comes first
          </LinkKey>
        ) : mayWeigh && next ? (
          <Key onClick={() => (isReady ? setSlot(next) : refuse())}>
            Scan part {next.part}
            {card.batches.length > 1 ? `, batch ${next.batch}` : ''}
          </Key>
        ) : mayWeigh ? (
          <Key onClick={() => setPouring(true)}>{sayLift(card.nr)} is poured</Key>
        ) : (
          <LinkKey href={`/jobs/${card.jobId}/pours/${card.pourId}`}>Back to {card.pour}</LinkKey>
        )}
        <Key variant="ghost" onClick={() => window.print()}>
          Print the card
        </Key>
      </KeyBar>
    </div>
  );
}

/** The time to the half minute: the window of the lift below opens and closes while a card lies open. */
function useNow(made: number): number {
  const [now, setNow] = useState(made);
  useEffect(() => {
    setNow(Date.now());
    const tick = setInterval(() => setNow(Date.now()), 30_000);
    return () => clearInterval(tick);
  }, []);
  return now;
}

/** The room as it was typed on this device for a lift and a day, or else as it was planned. */
function useRoom(of: string, planned: string): [string, (text: string) => void] {
  const name = `room-${of}`;
  const [text, setText] = useState(planned);
  useEffect(() => {
    const kept = recall(name);
    if (kept !== undefined) setText(kept);
  }, [name]);
  return [
    text,
    (typed) => {
      setText(typed);
      remember(name, typed);
    },
  ];
}

const sayPrompt = ({ system, batches }: LiftCard, { batch, part }: OpenSlot) =>
  `Scan part ${part} of ${system}${batches.length > 1 ? `, batch ${batch}` : ''}.`;
