import Link from 'next/link';
import { Fold } from '@/app/_ui/fold';
import { Rule } from '@/app/_ui/rule/rule';
import { timeScale } from '@/app/_ui/rule/time-scale';
import figures from '@/app/(shop)/pieces/_ui/figures.module.css';
import styles from '@/app/(shop)/places/_ui/room-chart.module.css';
import { RoomTable } from '@/app/(shop)/places/_ui/room-table';
import { type RoomChart, signsApart } from '@/app/(shop)/places/room-chart';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A sign is a tenth of the chart high. */
const SIGN_SHARE = 0.1;
/** More letters than this in one place would cover the days beside them. */
const MOST_SIGNS = 3;
const FEW_PIECES = 4;

export interface RoomChartFigureProps {
  chart: RoomChart;
  place: string;
  today: CalendarDate;
  order: DateOrder;
  prefer: UnitSystem;
}

/** What the air settles wood at, as a line over the days, and each piece's wettest reading as its letter. The table says the same. */
export function RoomChartFigure({ chart, place, today, order, prefer }: RoomChartFigureProps) {
  const scale = timeScale(chart.from, chart.to);
  const days = chart.runs.flat();
  const most = Math.max(
    ...days.map(({ emc }) => emc),
    ...chart.wood.flatMap(({ points }) => points.map(({ mcTenths }) => mcTenths / 10)),
  );
  const step = most > 45 ? 20 : most > 22 ? 10 : 5;
  const top = step * Math.ceil((most + 0.5) / step);
  const x = (on: CalendarDate) => (scale.middleOf(on) * 1000).toFixed(1);
  const down = (mc: number) => 1 - mc / top;
  const y = (mc: number) => (down(mc) * 1000).toFixed(1);
  const levels = Array.from({ length: top / step }, (_, index) => index * step);
  const say = (on: CalendarDate) => sayDate(on, { order, today });
  return (
    <figure className={figures.chart}>
      <div
        className={figures.drawn}
        role="img"
        aria-label={`What the air of ${place} settles wood at, from ${say(chart.from)} to today, and what the wood in it read. The table below has every figure.`}
      >
        <div className={figures.plot}>
          <svg viewBox="0 0 1000 1000" preserveAspectRatio="none" aria-hidden="true" focusable="false">
            {levels.map((mc) => (
              <path key={mc} className={figures.grid} d={`M0 ${y(mc)}H1000`} />
            ))}
            <path className={figures.today} d={`M${x(today)} 0V1000`} />
            {chart.runs.map((run) => (
              <path
                key={run[0]?.on}
                className={figures.curve}
                d={`M${run.map(({ on, emc }) => `${x(on)} ${y(emc)}`).join('L')}${run.length === 1 ? 'h4' : ''}`}
              />
            ))}
          </svg>
          {levels.map((mc) => (
            <span key={mc} className={figures.scale} style={{ top: `${down(mc) * 100}%` }}>
              {mc} %
            </span>
          ))}
          {signsApart(chart.wood, top * 10 * SIGN_SHARE).map(({ on, mcTenths, signs }) => (
            <span
              key={`${on} ${signs[0]}`}
              className={styles.sign}
              style={{ left: `${scale.middleOf(on) * 100}%`, top: `${down(mcTenths / 10) * 100}%` }}
            >
              {signs.length > MOST_SIGNS ? `${signs[0]}+${signs.length - 1}` : signs.join('')}
            </span>
          ))}
        </div>
        <Rule scale={scale} />
      </div>
      <ul className={figures.key}>
        {days.length > 0 ? (
          <li>
            <svg width="30" height="6" aria-hidden="true" focusable="false">
              <path className={figures.curve} d="M0 3H30" />
            </svg>
            the air settles wood at
          </li>
        ) : null}
        {chart.wood.length > 0 ? (
          <li>
            <span className={styles.inKey} aria-hidden="true">
              A
            </span>
            a piece of wood, its wettest of the day
          </li>
        ) : null}
      </ul>
      {chart.wood.length > 0 ? (
        <Fold
          title="Which piece is which"
          now={chart.wood.length === 1 ? 'one piece' : `${chart.wood.length} pieces`}
          open={chart.wood.length <= FEW_PIECES}
        >
          <ul className={styles.pieces}>
            {chart.wood.map(({ sign, label, title }) => (
              <li key={sign}>
                <span className={styles.inKey}>{sign}</span>
                <Link href={`/pieces/${label}`} className={styles.piece}>
                  {title}
                </Link>
              </li>
            ))}
          </ul>
        </Fold>
      ) : null}
      <Fold title="The same as a table" now={`${chart.rows.length} ${chart.rows.length === 1 ? 'day' : 'days'}`}>
        <RoomTable rows={chart.rows} say={say} prefer={prefer} />
      </Fold>
    </figure>
  );
}
