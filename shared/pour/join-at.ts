import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { ResinSheet } from '@/shared/pour/resin-sheet';

/** How a lift would join the one below if it were poured at an instant. */
export type JoinNow = 'too-early' | 'while-tacky' | 'sand-first';

/** A lift that was poured and is to be poured on, with the sheet's hours for it. */
export type LiftBelow = Pick<ResinSheet, 'againFromHours' | 'againToHours'> & {
  /** 0 is the seal coat. */
  readonly nr: number;
  readonly on: CalendarDate;
  /** The instant, milliseconds since 1970, and whether it is known or only its day is. */
  readonly at: number;
  readonly isExact: boolean;
};

/**
 * Whether the lift below may be poured on at an instant, in milliseconds since 1970, by the hours since it was poured: before
 * the sheet's window it is too early, heat on heat; within it, both ends included, the two cure into each other while it is
 * tacky; past it, or where the sheet names no end, it is sanded first (windows of makers' bulletins; common practice, and
 * the sheet goes before it). The hours are answered in tenths, rounded so that they never say what is not so. From 12 to 24
 * hours: after 11 too early, after 24 while tacky, after 25 sand first.
 */
export function joinAt(
  { at, againFromHours, againToHours }: Pick<LiftBelow, 'at' | 'againFromHours' | 'againToHours'>,
  instant: number,
): { readonly joins: JoinNow; readonly hours: number } {
  const hours = Math.max(0, (instant - at) / 3_600_000);
  if (againFromHours !== undefined && hours < againFromHours) {
    return { joins: 'too-early', hours: Math.floor(hours * 10) / 10 };
  }
  return againToHours !== undefined && hours <= againToHours
    ? { joins: 'while-tacky', hours: Math.floor(hours * 10) / 10 }
    : { joins: 'sand-first', hours: Math.ceil(hours * 10) / 10 };
}
