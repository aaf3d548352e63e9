import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { LinkKey } from '@/app/_ui/keys';
import { ReasonList } from '@/app/_ui/verdict/reason-list';
import { VerdictPanel } from '@/app/_ui/verdict/verdict-panel';
import { confirmDatesHref } from '@/app/(shop)/_parts/stock/confirm-dates-href';
import { sayStanding } from '@/app/(shop)/_parts/stock/say-standing';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayReason } from '@/shared/shelf-life/say-reason';
import type { Verdict } from '@/shared/shelf-life/types/verdict';
import { whatToDo } from '@/shared/shelf-life/what-to-do';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface VerdictTodayProps {
  verdict: Verdict;
  usedUp: boolean;
  line: Pick<ContainerLine, 'unit' | 'kind' | 'lotId'>;
  today: CalendarDate;
  order: DateOrder;
  prefer: UnitSystem;
}

/** How a container stands for a client's job today, with every reason and what to do about it. Pull judges it for another day. */
export function VerdictToday({ verdict, usedUp, line, today, order, prefer }: VerdictTodayProps) {
  if (usedUp) return <p className={styles.gone}>Nothing is left of it. The history says where it went.</p>;
  const confirmHref = confirmDatesHref(verdict.reasons, line.lotId);
  const { limit, because } = sayStanding(verdict, { today, order, prefer });
  const sayAmount = (amount: number) => printQuantity(amountOf(line.unit, amount), line.unit, { prefer });
  return (
    <>
      <VerdictPanel word={verdict.word} headline={[because ?? `${limit}.`]} size="small" fresh={false} />
      <p className={styles.after}>For a client’s job today. Pull judges it for another day or another job.</p>
      {verdict.reasons.length > 0 ? (
        <ReasonList
          reasons={verdict.reasons.map((reason, index) => ({
            id: `${reason.code} ${index}`,
            word: reason.weight === 'note' ? 'use' : reason.weight,
            sentence: sayReason(reason, { today, order, prefer, sayAmount }),
            toDo: whatToDo(reason, { materialKind: line.kind, prefer }),
          }))}
        />
      ) : null}
      {confirmHref ? (
        <div className={styles.keysRow}>
          <LinkKey variant="ghost" href={confirmHref}>
            Confirm its dates
          </LinkKey>
        </div>
      ) : null}
    </>
  );
}
