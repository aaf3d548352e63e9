'use client';

import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { TimeScale } from '@/app/_ui/rule/time-scale';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import styles from '@/app/(shop)/jobs/[id]/_ui/time-line.module.css';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { ClosedDays } from '@/shared/timeline/closed-days';
import { closedOn } from '@/shared/timeline/closed-days';
import type { StepWord } from '@/shared/timeline/judge-timeline';

export type StepTrackProps = {
  scale: TimeScale;
  today: CalendarDate;
  dueOn: CalendarDate | null;
  shut: ClosedDays;
  day: CalendarDate;
  /** Where it stands in the book, where it was moved. */
  wasDay: CalendarDate | undefined;
  /** What it waits for: from that day to the first day it may be on. */
  wait: { from: CalendarDate; to: CalendarDate } | undefined;
  word: StepWord;
  done: boolean;
  /** What the step is, for whoever does not see where it stands. */
  says: string;
  /** Undefined where it cannot be moved. */
  onMove: ((day: CalendarDate, landing: 'open') => void) | undefined;
  onHold: (held: boolean) => void;
};

const STEPS: Readonly<Record<string, number>> = { ArrowLeft: -1, ArrowRight: 1, PageUp: -7, PageDown: 7 };

/** One step on the rule: closed days hatched, today and the due day as lines, the wait before it, and its mark to drag. */
export function StepTrack(props: StepTrackProps) {
  const { scale, today, dueOn, shut, day, wasDay, wait, word, done, says, onMove, onHold } = props;
  const track = useRef<HTMLDivElement>(null);
  const isDragged = useRef(false);
  const percent = (at: number) => `${(Math.min(1, Math.max(0, at)) * 100).toFixed(3)}%`;
  const days = Array.from({ length: scale.days }, (_, nr) => addDays(scale.from, nr));
  const hatched = days.filter((each) => closedOn(each, shut));

  const dayAt = (clientX: number): CalendarDate => {
    const box = track.current?.getBoundingClientRect();
    if (!box || box.width === 0) return day;
    const cell = Math.floor(((clientX - box.left) / box.width) * scale.days);
    return addDays(scale.from, Math.min(scale.days - 1, Math.max(0, cell)));
  };
  const drag = (pointer: PointerEvent<HTMLButtonElement>) => {
    if (!isDragged.current || !onMove) return;
    const to = dayAt(pointer.clientX);
    if (to !== day) onMove(to, 'open');
  };
  const drop = (pointer: PointerEvent<HTMLButtonElement>) => {
    if (!isDragged.current) return;
    isDragged.current = false;
    pointer.currentTarget.releasePointerCapture(pointer.pointerId);
    onHold(false);
  };
  const onKeyDown = (press: KeyboardEvent) => {
    const by = STEPS[press.key];
    if (by === undefined || !onMove) return;
    press.preventDefault();
    onMove(addDays(day, by), 'open');
  };

  return (
    <div ref={track} className={styles.track}>
      <svg className={styles.ground} aria-hidden="true" focusable="false">
        {hatched.map((each) => (
          <rect
            key={each}
            fill="url(#shut-days)"
            x={percent(scale.startOf(each))}
            width={percent(1 / scale.days)}
            y="0"
            height="100%"
          />
        ))}
        {wait && wait.to > wait.from ? (
          <line
            className={styles.wait}
            x1={percent(scale.middleOf(wait.from))}
            x2={percent(scale.middleOf(wait.to))}
            y1="50%"
            y2="50%"
          />
        ) : null}
        {dueOn && scale.has(dueOn) ? (
          <line
            className={styles.due}
            x1={percent(scale.endOf(dueOn))}
            x2={percent(scale.endOf(dueOn))}
            y1="0"
            y2="100%"
          />
        ) : null}
        <line
          className={styles.today}
          x1={percent(scale.middleOf(today))}
          x2={percent(scale.middleOf(today))}
          y1="0"
          y2="100%"
        />
        {wasDay ? <circle className={styles.was} cx={percent(scale.middleOf(wasDay))} cy="50%" r="7" /> : null}
      </svg>
      {onMove ? (
        <button
          type="button"
          className={styles.mark}
          style={{ left: percent(scale.middleOf(day)) }}
          aria-label={`${says} Left and right arrow keys move it by a day.`}
          onKeyDown={onKeyDown}
          onPointerDown={(pointer) => {
            if (pointer.button !== 0) return;
            pointer.currentTarget.setPointerCapture(pointer.pointerId);
            isDragged.current = true;
            onHold(true);
          }}
          onPointerMove={drag}
          onPointerUp={drop}
          onPointerCancel={drop}
        >
          <VerdictMark word={word} size={24} />
        </button>
      ) : (
        <span className={styles.mark} data-done={done || undefined} style={{ left: percent(scale.middleOf(day)) }}>
          {done ? <span className={styles.doneDot} /> : <VerdictMark word={word} size={24} />}
        </span>
      )}
    </div>
  );
}
