import { Band } from '@/app/_ui/rule/band';
import { placeFlags } from '@/app/_ui/rule/place-flags';
import { Rule } from '@/app/_ui/rule/rule';
import styles from '@/app/_ui/rule/rule.module.css';
import { governingLimit, type ShelfLimit, sayShelf, type UseDay } from '@/app/_ui/rule/shelf';
import { timeScale } from '@/app/_ui/rule/time-scale';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';

export interface ShelfRibbonProps {
  from: CalendarDate;
  to: CalendarDate;
  today: CalendarDate;
  order: DateOrder;
  limits: readonly ShelfLimit[];
  useDay?: UseDay;
  openedOn?: CalendarDate;
}

const NARROWEST = 290;

/** The shelf life of one thing on a rule, with today and the day of use as lines across it and the basis of each limit below. */
export function ShelfRibbon({ from, to, today, order, limits, useDay, openedOn }: ShelfRibbonProps) {
  const scale = timeScale(from, to);
  const limit = governingLimit(limits);
  const late = useDay && limit ? useDay.date > limit.lastGoodDay : false;
  const flags = placeFlags(
    [
      ...(openedOn ? [{ day: openedOn, words: 'opened', kind: 'opened' }] : []),
      { day: today, words: 'today', kind: 'today' },
      ...(useDay ? [{ day: useDay.date, words: useDay.label, kind: late ? 'late' : 'needed' }] : []),
    ]
      .filter(({ day }) => scale.has(day))
      .map((flag) => ({ ...flag, at: scale.middleOf(flag.day) })),
    NARROWEST,
  );
  const rows = Math.max(0, ...flags.map(({ row }) => row + 1));
  const others = limits.filter((other) => other !== limit);
  const say = (date: CalendarDate) => sayDate(date, { order, today });

  return (
    <figure className={styles.ribbon}>
      <div
        className={styles.drawing}
        role="img"
        aria-label={sayShelf({ limits, useDay, openedOn }, { today, order })}
        style={{ paddingTop: `${rows * 24}px` }}
      >
        <Band scale={scale} limits={limits} />
        <Rule scale={scale} />
        {flags.map(({ kind, at, words, side, row }) => (
          <span
            key={kind}
            className={styles.flag}
            data-kind={kind}
            data-side={side}
            style={{ left: `${at * 100}%`, top: `${(rows - 1 - row) * 24}px` }}
          >
            <span>{words}</span>
          </span>
        ))}
      </div>
      <figcaption className={styles.caption}>
        {limit ? (
          <p>
            {limit.lastGoodDay < today ? 'Was good to' : 'Good to'} <b>{say(limit.lastGoodDay)}</b>: {limit.label}
          </p>
        ) : (
          <p>No limit is known for it.</p>
        )}
        {others.map((other) => (
          <p key={`${other.lastGoodDay} ${other.label}`}>
            {say(other.lastGoodDay)}: {other.label}
          </p>
        ))}
      </figcaption>
    </figure>
  );
}
