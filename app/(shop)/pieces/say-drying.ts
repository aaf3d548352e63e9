import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { DryingForecast } from '@/shared/wood/forecast-drying';
import type { ReadingGain } from '@/shared/wood/one-more-reading';
import type { PieceDrying } from './work-out-drying';

export type SayDays = { readonly today: CalendarDate; readonly order: DateOrder };

const TEN_YEARS = 'more than ten years off, or never';

/** A forecast as a headline and the sentences under it. */
export function sayForecast(
  { reached, dates, neverShare }: DryingForecast,
  target: number,
  { today, order }: SayDays,
): { readonly headline: string; readonly sentences: readonly string[] } {
  if (reached) {
    return {
      headline: `At ${target} % already, going by its wettest newest reading.`,
      sentences: ['Read it in several places on the day you cut: the meter in the wood decides.'],
    };
  }
  const say = (date: CalendarDate | null) => (date === null ? TEN_YEARS : sayDate(date, { order, today }));
  const never = Math.round(neverShare * 100);
  const past = dates.likely !== null && dates.likely < today;
  return {
    headline:
      dates.likely === null
        ? `${target} % is ${TEN_YEARS}.`
        : past
          ? `Going by its readings it came to ${target} % about ${say(dates.likely)}.`
          : `${target} % about ${say(dates.likely)}.`,
    sentences: [
      dates.latest === null
        ? `Four times in five not before ${say(dates.earliest)}; the late end is ${TEN_YEARS}.`
        : `Four times in five between ${say(dates.earliest)} and ${say(dates.latest)}.`,
      ...(never > 0 ? [`${never} in 100 that this air is too damp for it ever to get there.`] : []),
      past
        ? 'That day has passed and nobody has read it since: read it.'
        : 'For as long as the room stays as it is. The meter in the wood decides, on the day you cut.',
    ],
  };
}

/** What one more reading would do to the date. Undefined where it would do nothing worth saying. */
export function sayGain({ on, widthNow, widthThen }: ReadingGain, { today, order }: SayDays): string | undefined {
  const day = on === today ? 'today' : `on ${sayDate(on, { order, today })}`;
  if (widthNow === null) {
    return widthThen === null
      ? `One more reading ${day} would say more of its pace, but hardly give a latest date yet.`
      : `One more reading ${day} that shows what is expected would give it a latest date, ${widthThen} days after the earliest.`;
  }
  if (widthThen === null || widthThen >= widthNow) return undefined;
  return `One more reading ${day} that shows what is expected would narrow the ${widthNow} days between those dates to ${widthThen}.`;
}

/** The drawing in words, for those who do not see it. */
export function sayDrying(
  drying: Pick<PieceDrying, 'series' | 'curve'>,
  { target, emc, today, order }: SayDays & { readonly target: number; readonly emc?: number },
): string {
  const say = (date: CalendarDate) => sayDate(date, { order, today });
  const percent = (mc: number) => `${Math.round(mc * 10) / 10} %`;
  const read = drying.series.map(({ on, mcTenths }) => `${mcTenths / 10} % on ${say(on)}`).join(', ');
  const end = drying.curve.at(-1);
  return [
    `Moisture over time. The wettest reading of each day: ${read}.`,
    ...(end
      ? [
          `The forecast comes down to ${percent(end.middle)} by ${say(end.on)}, four times in five between ${percent(end.low)} and ${percent(end.high)}.`,
        ]
      : []),
    ...(emc === undefined ? [] : [`The room settles wood at ${percent(emc)}.`]),
    `The target is ${percent(target)}.`,
  ].join(' ');
}
