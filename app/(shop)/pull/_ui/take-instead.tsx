import { Code } from '@/app/_ui/code';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { saySuggestionWhy } from '@/shared/shelf-life/say-suggestion-why';
import type { Suggestion, Take } from '@/shared/shelf-life/types/suggestion';

export function sayGoodTo(
  take: Pick<Take, 'lastGoodDay'>,
  { today, order }: { today: CalendarDate; order: DateOrder },
): string {
  return take.lastGoodDay ? `good to ${sayDate(take.lastGoodDay, { order, today })}` : 'keeps';
}

export type TakeInsteadProps = {
  suggestion: Suggestion;
  today: CalendarDate;
  order: DateOrder;
  /** Shown when an amount was asked for: what to take of each. */
  sayAmount?: (amount: number) => string;
  onTake: (take: Take) => void;
};

/** The containers to take instead, or as well, each one press away. */
export function TakeInstead({ suggestion, today, order, sayAmount, onTake }: TakeInsteadProps) {
  const { containers, withThis, why } = suggestion;
  return (
    <>
      <ul className={styles.choices} aria-label="Containers to take">
        {withThis > 0 && sayAmount ? (
          <li className={styles.fromThis}>
            <span>This one</span>
            <b>{sayAmount(withThis)}</b>
          </li>
        ) : null}
        {containers.map((take) => (
          <li key={take.containerId}>
            <button type="button" className={styles.choice} onClick={() => onTake(take)}>
              <span className={styles.choiceName}>
                <VerdictMark word={take.word} size={22} /> <Code>{printOwnLabel(take.label as OwnLabelCode)}</Code>
              </span>
              <span className={styles.choiceDay}>{sayAmount ? sayAmount(take.take) : ''}</span>
              <span className={styles.soft}>{sayGoodTo(take, { today, order })}</span>
            </button>
          </li>
        ))}
      </ul>
      <p className={styles.soft}>{saySuggestionWhy(why)}</p>
    </>
  );
}
