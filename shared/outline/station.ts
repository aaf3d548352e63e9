import type { Nanometres } from '@/shared/units/nanometres';

/**
 * One measurement across the chalk line: how far along the line, and from the line to the edge on its left and on its
 * right. An offset is below zero where the edge has crossed to the other side of the line. Two stations at one distance
 * are a step: a notch, a broken corner.
 */
export type Station = { readonly at: Nanometres; readonly left: Nanometres; readonly right: Nanometres };

/**
 * A gap with no wood in it, measured the same way: its left bank and its right bank at stations along the line. One that
 * reaches the first or last station of the slab opens there: a crotch. Any other is a hole.
 */
type StationGap = { readonly stations: readonly Station[] };

/** What was measured down a chalk line, in the order it was entered. */
export type ChalkLine = { readonly stations: readonly Station[]; readonly gaps?: readonly StationGap[] };

/** One typed value: a station of the slab, or of gap `gap`, and which of its three numbers. */
export type StationValue = {
  readonly gap?: number;
  readonly station: number;
  readonly value: 'at' | 'left' | 'right';
};
