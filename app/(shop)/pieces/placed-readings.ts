import type { PieceLine } from '@/app/_server/stock/load-piece';
import { micrometres, type Point } from '@/shared/outline/point';

/** A reading with a place on the drawing. */
export type PlacedReading = { readonly id: string; readonly at: Point; readonly percent: number };

/** The newest reading of each place that was noted by numbers, what is corrected as corrected. */
export function placedReadings(readings: PieceLine['readings']): readonly PlacedReading[] {
  const placed = new Map<string, PlacedReading>();
  for (const { alongNm, acrossNm, mcTenths, correctedTenths } of readings) {
    if (alongNm === null) continue;
    const at = { x: micrometres(alongNm), y: acrossNm === null ? 0 : micrometres(acrossNm) };
    const id = `${at.x} ${at.y}`;
    // Newest first: what stands there already is newer.
    if (!placed.has(id)) placed.set(id, { id, at, percent: (correctedTenths ?? mcTenths) / 10 });
  }
  return [...placed.values()];
}
