import type { TreatmentLine } from '@/app/_server/treatments/treatments-of';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';
import { TREATED } from '@/app/(shop)/containers/treatment-words';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { printTemperature } from '@/shared/units/print-temperature';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What was done to a container, or what it went through, newest first. */
export function TreatmentList({
  lines,
  today,
  order,
  prefer,
}: {
  lines: readonly TreatmentLine[];
  today: CalendarDate;
  order: DateOrder;
  prefer: UnitSystem;
}) {
  return (
    <ul className={styles.inspections}>
      {lines.map((line) => (
        <li key={line.id}>
          <b>
            {TREATED[line.kind].label}, {sayDate(line.doneOn, { order, today })}
          </b>
          <span>
            {[
              line.tenthsC === null ? '' : printTemperature(tenthsCelsius(line.tenthsC), { prefer }),
              line.minutes === null ? '' : `${line.minutes} min`,
              line.note,
            ]
              .filter(Boolean)
              .join(', ')}
          </span>
          <span className={styles.soft}>{line.who}</span>
        </li>
      ))}
    </ul>
  );
}
