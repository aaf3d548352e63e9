import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { STEADY_WITHIN_TENTHS, type Steadiness } from '@/shared/wood/is-steady';

const percent = (tenths: number) => `${tenths / 10}`;

/**
 * Whether a piece has come to rest, in a sentence, and what to do where it cannot be told. A state `steady` over 0.2
 * points gives "Steady: three readings a week or more apart lie within 0.2 points (…)."
 */
export function saySteadiness(
  steadiness: Steadiness,
  { today, order }: { readonly today: CalendarDate; readonly order: DateOrder },
): { readonly says: string; readonly todo?: string } {
  if (steadiness.state === 'too-few') {
    const { wanted, daysApart } = steadiness;
    return {
      says: 'Whether it has come to rest cannot be told yet.',
      todo: `Read it ${wanted === 1 ? 'once' : `${wanted} times`} more, at least ${daysApart} days apart and no more than three weeks.`,
    };
  }
  const { on, spreadTenths } = steadiness;
  const days = `${sayDate(on[0] ?? today, { order, today })} to ${sayDate(on.at(-1) ?? today, { order, today })}`;
  return steadiness.state === 'steady'
    ? {
        says: `Steady: its last three readings lie within ${percent(spreadTenths)} points (${days}).`,
        todo: 'It has stopped moving where it stands, which is not yet to say it is dry enough.',
      }
    : {
        says: `Still moving: its last three readings are ${percent(spreadTenths)} points apart (${days}).`,
        todo: `It has come to rest when three, a week or more apart, lie within ${percent(STEADY_WITHIN_TENTHS)}.`,
      };
}
