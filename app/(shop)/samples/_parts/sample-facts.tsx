import Link from 'next/link';
import type { SampleLine } from '@/app/_server/samples/list-samples';
import styles from '@/app/(shop)/samples/_ui/samples.module.css';
import { FAULT_OF, LOOKS, sayLookDay } from '@/app/(shop)/samples/look-words';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';

export interface SampleFactsProps {
  sample: SampleLine;
  today: CalendarDate;
  order: DateOrder;
}

/** What the book has of a sample: when to look, what it is of, where it lies, and what was seen of it. */
export function SampleFacts({ sample, today, order }: SampleFactsProps) {
  return (
    <>
      <div className={styles.head}>
        <b>{sample.name}</b>
        <span>{sample.gone ? 'gone' : sayLookDay(sample.lookOn, { order, today })}</span>
      </div>
      <p className={styles.soft}>
        {[sample.pour, sample.place, `made ${sayDate(sample.madeOn, { order, today })}`].filter(Boolean).join(', ')}
        {sample.job ? (
          <>
            , <Link href={`/jobs/${sample.job.id}`}>{sample.job.name}</Link>
          </>
        ) : null}
      </p>
      {sample.lots.length > 0 ? (
        <p className={styles.lots}>
          {sample.lots.map((lot) => (
            <Link key={lot.lotId} href={`/lots/${lot.lotId}`}>
              {lot.words}
            </Link>
          ))}
        </p>
      ) : null}
      {sample.note ? <p>{sample.note}</p> : null}
      {sample.looks.length > 0 ? (
        <ul className={styles.looks} aria-label={`What was seen of ${sample.name}`}>
          {sample.looks.map((look) => (
            <li key={look.id}>
              <b data-bad={FAULT_OF[look.result] !== null || undefined}>{LOOKS[look.result]}</b>,{' '}
              {sayDate(look.lookedOn, { order, today })}
              {look.note ? `. ${look.note}` : ''}
              {look.photo ? (
                <>
                  . <a href={`/photos/${look.photo}`}>Photo</a>
                </>
              ) : null}
            </li>
          ))}
        </ul>
      ) : null}
    </>
  );
}
