import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { ReasonCode } from '@/shared/shelf-life/types/reason';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

/** The lists of Watch that containers stand in, the most urgent first. */
export const WATCH_LISTS = [
  'on-hold',
  'spoilt',
  'retest',
  'expired',
  'expiring',
  'forgotten',
  'undated',
  'unconfirmed',
] as const;
export type WatchList = (typeof WATCH_LISTS)[number];

/** A limit this many days away, or fewer, is shown; more where the material's own care window is wider. */
export const SOON_DAYS = 60;
/** An inspection or test pour that a container rests on is to be made again so many days before it ends. */
export const RETEST_DAYS = 14;
/** Opened longer ago than this and not moved since. */
export const FORGOTTEN_DAYS = 60;

/** The reasons that put a container into a list; the others go by days. */
export const REASONS_OF: Readonly<Partial<Record<WatchList, readonly ReasonCode[]>>> = {
  'on-hold': ['on-hold', 'quarantine', 'recalled'],
  spoilt: ['gelled', 'skinned-through', 'frozen-ruined', 'inspection-failed'],
  expired: ['past-limit'],
  undated: ['date-unknown'],
  unconfirmed: ['facts-contradict', 'date-unconfirmed'],
};

/**
 * Which list a container stands in, judged as for a client's piece today: the first that fits, so that each is seen once
 * and under what is most urgent about it. Undefined when it needs nothing. The last good day itself is not past.
 * `openedOn` and `movedOn` are calendar days of the workshop.
 */
export function watchListOf(
  verdict: Verdict,
  { openedOn, movedOn, today }: { openedOn?: CalendarDate; movedOn?: CalendarDate; today: CalendarDate },
): WatchList | undefined {
  const has = (list: WatchList) => verdict.reasons.some((reason) => REASONS_OF[list]?.includes(reason.code));
  const near = verdict.reasons.some((reason) => reason.code === 'limit-near');
  const lastGoodDay = verdict.governing?.lastGoodDay;
  const longAgo = addDays(today, -FORGOTTEN_DAYS);
  if (has('on-hold')) return 'on-hold';
  if (has('spoilt')) return 'spoilt';
  if (verdict.governing?.basis === 'inspection' && verdict.governing.lastGoodDay <= addDays(today, RETEST_DAYS))
    return 'retest';
  if (has('expired')) return 'expired';
  if (near || (lastGoodDay && lastGoodDay <= addDays(today, SOON_DAYS))) return 'expiring';
  if (openedOn && openedOn < longAgo && (!movedOn || movedOn < longAgo)) return 'forgotten';
  if (has('undated')) return 'undated';
  if (has('unconfirmed')) return 'unconfirmed';
  return undefined;
}
