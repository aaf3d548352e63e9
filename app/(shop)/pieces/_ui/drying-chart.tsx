import { Rule } from '@/app/_ui/rule/rule';
import { timeScale } from '@/app/_ui/rule/time-scale';
import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import { sayDrying } from '@/app/(shop)/pieces/say-drying';
import type { PieceDrying } from '@/app/(shop)/pieces/work-out-drying';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';

export interface DryingChartProps {
  drying: PieceDrying;
  target: number;
  emc?: number;
  today: CalendarDate;
  order: DateOrder;
}

/** The readings as points on a rule of days, and the forecast as a curve with its middle 80 % in wood colour. */
export function DryingChart({ drying, target, emc, today, order }: DryingChartProps) {
  const scale = timeScale(drying.from, drying.to);
  const figures = [
    target,
    emc ?? 0,
    ...drying.series.map(({ mcTenths }) => mcTenths / 10),
    ...drying.curve.map(({ high }) => high),
  ];
  const step = Math.max(...figures) > 45 ? 20 : Math.max(...figures) > 22 ? 10 : 5;
  const top = step * Math.ceil((Math.max(...figures) + 0.5) / step);
  const across = (on: CalendarDate) => scale.middleOf(on);
  const down = (mc: number) => 1 - mc / top;
  const at = (on: CalendarDate, mc: number) => `${(across(on) * 1000).toFixed(1)} ${(down(mc) * 1000).toFixed(1)}`;
  const level = (mc: number) => `M0 ${(down(mc) * 1000).toFixed(1)}H1000`;
  const path = (points: readonly string[]) => (points.length ? `M${points.join('L')}` : '');
  const band = [
    ...drying.curve.map(({ on, high }) => at(on, high)),
    ...drying.curve.toReversed().map(({ on, low }) => at(on, low)),
  ];
  const levels = Array.from({ length: top / step }, (_, index) => index * step);
  return (
    <figure className={styles.chart}>
      <div className={styles.drawn} role="img" aria-label={sayDrying(drying, { target, emc, today, order })}>
        <div className={styles.plot}>
          <svg viewBox="0 0 1000 1000" preserveAspectRatio="none" aria-hidden="true" focusable="false">
            {levels.map((mc) => (
              <path key={mc} className={styles.grid} d={level(mc)} />
            ))}
            {band.length ? <path className={styles.band} d={`${path(band)}Z`} /> : null}
            <path className={styles.today} d={`M${(across(today) * 1000).toFixed(1)} 0V1000`} />
            {emc === undefined ? null : <path className={styles.settles} d={level(emc)} />}
            <path className={styles.target} d={level(target)} />
            <path className={styles.curve} d={path(drying.curve.map(({ on, middle }) => at(on, middle)))} />
          </svg>
          {levels.map((mc) => (
            <span key={mc} className={styles.scale} style={{ top: `${down(mc) * 100}%` }}>
              {mc} %
            </span>
          ))}
          {drying.series.map(({ on, mcTenths }) => (
            <span
              key={on}
              className={styles.dot}
              style={{ left: `${across(on) * 100}%`, top: `${down(mcTenths / 10) * 100}%` }}
            />
          ))}
        </div>
        <Rule scale={scale} />
      </div>
      <ul className={styles.key} aria-hidden="true">
        <li>
          <svg width="12" height="12" aria-hidden="true" focusable="false">
            <circle cx="6" cy="6" r="5.5" fill="var(--ink)" />
          </svg>
          wettest of the day
        </li>
        {drying.curve.length ? (
          <li>
            <svg width="30" height="16" aria-hidden="true" focusable="false">
              <path className={styles.band} d="M0 0H30V16H0Z" />
              <path className={styles.curve} d="M0 8H30" />
            </svg>
            forecast, 4 in 5
          </li>
        ) : null}
        <li>
          <svg width="30" height="4" aria-hidden="true" focusable="false">
            <path className={styles.target} d="M0 2H30" />
          </svg>
          target {target} %
        </li>
        {emc === undefined ? null : (
          <li>
            <svg width="30" height="4" aria-hidden="true" focusable="false">
              <path className={styles.settles} d="M0 2H30" />
            </svg>
            the room, {emc.toFixed(1)} %
          </li>
        )}
        <li>
          <svg width="4" height="16" aria-hidden="true" focusable="false">
            <path d="M2 0V16" stroke="var(--soft)" />
          </svg>
          today
        </li>
      </ul>
    </figure>
  );
}
