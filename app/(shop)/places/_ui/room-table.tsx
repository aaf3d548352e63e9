import styles from '@/app/(shop)/places/_ui/room-chart.module.css';
import type { RoomRow } from '@/app/(shop)/places/room-chart';
import { sayAir } from '@/app/(shop)/places/say-room';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A year of days is more than anybody reads. */
const MOST_ROWS = 120;

export interface RoomTableProps {
  rows: readonly RoomRow[];
  say: (on: CalendarDate) => string;
  prefer: UnitSystem;
}

/** The air of a room and the wood read in it, day by day. */
export function RoomTable({ rows, say, prefer }: RoomTableProps) {
  return (
    <>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Day</th>
            <th scope="col">Air</th>
            <th scope="col">Settles at</th>
            <th scope="col">Wood read</th>
          </tr>
        </thead>
        <tbody>
          {rows.slice(0, MOST_ROWS).map(({ on, settles, wood }) => (
            <tr key={on}>
              <th scope="row">{say(on)}</th>
              <td>{settles ? sayAir(settles.air, prefer) : 'not noted'}</td>
              <td>{settles ? `${settles.emc.toFixed(1)} %` : '–'}</td>
              <td>{wood.map(({ sign, mcTenths }) => `${sign} ${mcTenths / 10} %`).join(', ') || '–'}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {rows.length > MOST_ROWS ? <p className={styles.more}>The newest {MOST_ROWS} days are shown.</p> : null}
    </>
  );
}
