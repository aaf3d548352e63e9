import type { KeptReading } from '@/app/_server/stock/readings-of-piece';
import { Fold } from '@/app/_ui/fold';
import stock from '@/app/(shop)/_parts/stock/stock.module.css';
import { HowBody } from '@/app/(shop)/pieces/_ui/how';
import styles from '@/app/(shop)/pieces/_ui/readings-table.module.css';
import { StrikeReading } from '@/app/(shop)/pieces/_ui/strike-reading';
import { sayWhere } from '@/app/(shop)/pieces/say-reading';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { printTemperature } from '@/shared/units/print-temperature';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import type { UnitSystem } from '@/shared/units/unit-system';
import { correctForTemperature } from '@/shared/wood/correct-for-temperature';

export interface ReadingsTableProps {
  label: string;
  readings: readonly KeptReading[];
  prefer: UnitSystem;
  today: CalendarDate;
  order: DateOrder;
}

/** So many stand open; the older ones are folded. */
const SHOWN = 6;

/** Every reading of a piece: what counts, how it was corrected, where and with what, and those struck out. */
export function ReadingsTable({ readings, ...words }: ReadingsTableProps) {
  if (readings.length === 0)
    return (
      <p className={stock.soft}>None yet. Press Read its moisture, and read it mid-length, away from ends and knots.</p>
    );
  const older = readings.slice(SHOWN);
  return (
    <>
      <Rows {...words} readings={readings.slice(0, SHOWN)} />
      {older.length > 0 ? (
        <Fold title="Older readings" now={`${older.length} more`}>
          <Rows {...words} readings={older} />
        </Fold>
      ) : null}
    </>
  );
}

function Rows({ label, readings, prefer, today, order }: ReadingsTableProps) {
  const say = (on: CalendarDate) => sayDate(on, { order, today });
  return (
    <table className={`${stock.readings} ${styles.table}`}>
      <thead>
        <tr>
          <th scope="col">Day</th>
          <th scope="col">Reading</th>
          <th scope="col">Where, with what</th>
        </tr>
      </thead>
      <tbody>
        {readings.map((reading) => (
          <tr key={reading.id} data-struck={reading.struck !== null || undefined}>
            <td>{say(reading.takenOn)}</td>
            <td>
              {reading.struck === null ? (
                `${(reading.correctedTenths ?? reading.mcTenths) / 10} %`
              ) : (
                <s>{reading.mcTenths / 10} %</s>
              )}
            </td>
            <td>
              {sayWhere(reading, prefer) || 'Not noted'}
              {reading.inherited ? <p className={styles.note}>Taken on the piece it was cut from.</p> : null}
              {reading.struck !== null ? (
                <p className={styles.note}>Struck out. {sayReason(reading.struck)}</p>
              ) : (
                <div className={styles.acts}>
                  <Corrected reading={reading} prefer={prefer} />
                  <StrikeReading
                    label={label}
                    readingId={reading.id}
                    says={`${reading.mcTenths / 10} % of ${say(reading.takenOn)}`}
                  />
                </div>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The history names the reading before the reason. */
const sayReason = (why: string) => why.slice(why.indexOf(': ') + 2);

function Corrected({ reading, prefer }: { reading: KeptReading; prefer: UnitSystem }) {
  const { mcTenths, correctedTenths, woodTenthsC } = reading;
  if (woodTenthsC === null) return null;
  const wood = tenthsCelsius(woodTenthsC);
  const said = printTemperature(wood, { prefer });
  if (correctedTenths === null) return <p className={styles.note}>In wood of {said}; taken as shown.</p>;
  const how = correctForTemperature(mcTenths, wood, 'pin');
  return (
    <details className={styles.how}>
      <summary>
        The meter showed {mcTenths / 10} %, in wood of {said}
      </summary>
      {how.ok ? <HowBody how={how.value.how} prefer={prefer} /> : null}
    </details>
  );
}
