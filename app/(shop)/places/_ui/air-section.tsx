import Link from 'next/link';
import type { AirNow } from '@/app/_server/climate/air-of';
import type { RoomPage } from '@/app/_server/climate/room-page';
import { Fold } from '@/app/_ui/fold';
import { Section } from '@/app/_ui/section';
import { pieceRow } from '@/app/(shop)/_parts/stock/piece-row';
import { FigureList } from '@/app/(shop)/pieces/_ui/figure-list';
import { figuredPiece } from '@/app/(shop)/pieces/figured-piece';
import { NoteAir } from '@/app/(shop)/places/_ui/note-air';
import { PasteAir } from '@/app/(shop)/places/_ui/paste-air';
import styles from '@/app/(shop)/places/_ui/room-chart.module.css';
import { RoomChartFigure } from '@/app/(shop)/places/_ui/room-chart-figure';
import { Seasons } from '@/app/(shop)/places/_ui/seasons';
import { roomChart } from '@/app/(shop)/places/room-chart';
import { sayAir, sayBasis } from '@/app/(shop)/places/say-room';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { longMonth } from '@/shared/calendar/month-names';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import type { UnitSystem } from '@/shared/units/unit-system';
import { equilibriumMoisture } from '@/shared/wood/equilibrium-moisture';

export interface AirSectionProps {
  place: { label: string; name: string };
  now: AirNow | undefined;
  room: RoomPage;
  today: CalendarDate;
  order: DateOrder;
  prefer: UnitSystem;
}

/** The air of a place: what wood settles at in it, the year of it against the wood that stands there, and how it gets into the book. */
export function AirSection({ place, now, room, today, order, prefer }: AirSectionProps) {
  const { known, wood } = room;
  const chart = roomChart(
    {
      days: known?.days ?? [],
      seasons: known?.seasons ?? [],
      wood: wood.map((line) => ({
        label: line.label,
        title: `${pieceRow(line, { today, order, prefer }).title}, ${printOwnLabel(line.label)}`,
        readings: figuredPiece(line, prefer).readings,
      })),
    },
    today,
  );
  const own = known && !known.inherited ? known.seasons : [];
  const typing = { label: place.label, prefer, today, order };
  return (
    <Section title="The air here" aside={now ? sayAir(now.air, prefer) : null}>
      <div className={styles.part}>
        {now ? (
          <>
            <p className={styles.now}>Wood settles at {now.emc.value.mc.toFixed(1)} % here.</p>
            <p className={styles.soft}>
              {sayBasis(now, { today, order })}
              {now.inherited ? (
                <>
                  {' '}
                  <Link href={`/places/${now.of.label}`} className={styles.piece}>
                    Look at {now.of.name}
                  </Link>
                </>
              ) : null}
            </p>
            <FigureList
              prefer={prefer}
              figures={[{ term: 'Wood settles at, EMC', value: `${now.emc.value.mc.toFixed(1)} %`, how: now.emc.how }]}
            />
          </>
        ) : (
          <p>
            Nobody has noted the air here. Write what the thermometer and the hygrometer show once a week: the book then
            says what wood settles at, and forecasts when each piece here will be dry.
          </p>
        )}
        {chart ? (
          <RoomChartFigure chart={chart} place={place.name} today={today} order={order} prefer={prefer} />
        ) : null}
      </div>
      <Fold title="Note the air today" group="air">
        <NoteAir {...typing} />
      </Fold>
      <Fold title="Paste the lines of a logger" group="air">
        <PasteAir {...typing} />
      </Fold>
      <Fold
        title="The usual air by season"
        group="air"
        now={own.length > 0 ? own.map(({ name }) => name).join(', ') : undefined}
      >
        <Seasons
          label={place.label}
          prefer={prefer}
          seasons={own.map((season) => {
            const emc = equilibriumMoisture({ scale: 'C', degrees: season.tenthsC / 10 }, season.humidityTenths / 10);
            const settles = emc.ok ? `: wood settles at ${emc.value.value.mc.toFixed(1)} %` : '';
            return {
              id: season.id,
              name: season.name,
              says: `from ${longMonth(season.fromMonth)} on, ${sayAir(season, prefer)}${settles}`,
            };
          })}
        />
      </Fold>
    </Section>
  );
}
