import { Facts } from '@/app/_ui/facts';
import styles from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/mix-card.module.css';
import type { LiftCard } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/lift-card';
import { sayDay, sayLift } from '@/app/(shop)/jobs/[id]/pours/say-pour';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { printTemperature } from '@/shared/units/print-temperature';
import type { UnitSystem } from '@/shared/units/unit-system';

export type LiftDoneProps = {
  card: LiftCard;
  poured: NonNullable<LiftCard['poured']>;
  today: CalendarDate;
  order: DateOrder;
  units: UnitSystem;
};

/** A lift that was poured: when, by whom, in what room, and its photo. */
export function LiftDone({ card, poured, today, order, units }: LiftDoneProps) {
  const { room, humidityTenths, note, photo, why } = poured;
  const reason = /: (.+)$/s.exec(why)?.[1];
  return (
    <div className={styles.done}>
      <h2>{sayLift(card.nr)} is poured</h2>
      <Facts
        facts={[
          { term: 'On', value: `${sayDay(poured.on, order, today)}, by ${poured.who}` },
          ...(room === null
            ? []
            : [{ term: 'Room', value: sayRoom(printTemperature(room, { prefer: units }), humidityTenths) }]),
          ...(card.on && card.said.sanded
            ? [{ term: 'Before', value: `${sayLift(card.on.nr)} below was sanded` }]
            : []),
          ...(reason ? [{ term: 'Why all the same', value: reason }] : []),
          ...(note ? [{ term: 'Note', value: note }] : []),
        ]}
      />
      {photo ? (
        <a href={`/photos/${photo}`}>
          {/* biome-ignore lint/performance/noImgElement: the picture is already cut to size by the store */}
          <img className={styles.photo} src={`/photos/${photo}`} alt={`${sayLift(card.nr)} as it was poured`} />
        </a>
      ) : null}
    </div>
  );
}

const sayRoom = (degrees: string, humidityTenths: number | null) =>
  humidityTenths === null ? degrees : `${degrees}, ${humidityTenths / 10} % humidity`;
