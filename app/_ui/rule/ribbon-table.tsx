import Link from 'next/link';
import type { ReactNode } from 'react';
import { Code } from '@/app/_ui/code';
import { Band } from '@/app/_ui/rule/band';
import { Rule } from '@/app/_ui/rule/rule';
import styles from '@/app/_ui/rule/rule.module.css';
import { governingLimit, type ShelfLimit, sayShelf, type UseDay } from '@/app/_ui/rule/shelf';
import { timeScale } from '@/app/_ui/rule/time-scale';
import { VerdictPill } from '@/app/_ui/verdict/verdict-pill';
import type { VerdictWord } from '@/app/_ui/verdict/word';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';

export interface RibbonRow {
  id: string;
  name: string;
  /** The label stuck on it, or its lot. */
  label: string;
  href?: string;
  limits: readonly ShelfLimit[];
  useDay?: UseDay;
  openedOn?: CalendarDate;
  word?: VerdictWord;
  /** The words of the verdict: "good to 12 Dec". */
  says?: string;
  /** What comes next for it: "lift 3 on 19 Dec". */
  note?: ReactNode;
}

export interface RibbonTableProps {
  from: CalendarDate;
  to: CalendarDate;
  today: CalendarDate;
  order: DateOrder;
  rows: readonly RibbonRow[];
  /** What the list holds, for those who hear it: "Shelf life of what is open". */
  label: string;
}

/** Many shelf lives on one rule, so that they can be compared: the rule stays in sight while the rows go by. */
export function RibbonTable({ from, to, today, order, rows, label }: RibbonTableProps) {
  const scale = timeScale(from, to);
  const todayAt = scale.has(today) ? `${scale.middleOf(today) * 100}%` : undefined;
  return (
    <div className={styles.table}>
      <div className={styles.head} aria-hidden="true">
        <div className={styles.lane}>
          <Rule scale={scale} />
          {todayAt ? (
            <span
              className={styles.flag}
              data-kind="today"
              data-side={scale.middleOf(today) > 0.8 ? 'left' : 'right'}
              style={{ left: todayAt, top: 0 }}
            >
              <span>today</span>
            </span>
          ) : null}
        </div>
      </div>
      <ul className={styles.rows} aria-label={label}>
        {rows.map((row) => {
          const limit = governingLimit(row.limits);
          const late = row.useDay && limit ? row.useDay.date > limit.lastGoodDay : false;
          return (
            <li key={row.id} className={styles.row}>
              <div className={styles.what}>
                {row.href ? (
                  <Link href={row.href} className={styles.title}>
                    {row.name}
                  </Link>
                ) : (
                  <span className={styles.title}>{row.name}</span>
                )}
                <Code>{row.label}</Code>
              </div>
              <div className={styles.says}>
                {row.word ? <VerdictPill word={row.word}>{row.says}</VerdictPill> : row.says}
                {row.note ? <span className={styles.note}>{row.note}</span> : null}
              </div>
              <div className={styles.lane} role="img" aria-label={sayShelf(row, { today, order })}>
                <Band scale={scale} limits={row.limits} />
                {todayAt ? <span className={styles.line} data-kind="today" style={{ left: todayAt }} /> : null}
                {row.useDay && scale.has(row.useDay.date) ? (
                  <span
                    className={styles.line}
                    data-kind={late ? 'late' : 'needed'}
                    style={{ left: `${scale.middleOf(row.useDay.date) * 100}%` }}
                  />
                ) : null}
              </div>
            </li>
          );
        })}
      </ul>
    </div>
  );
}
