import { measuringOf, type TypedMeasuring } from '@/app/(shop)/pieces/[label]/photo/typed-measuring';
import { straightenPixel } from '@/shared/outline/homography';
import { invertHomography } from '@/shared/outline/invert-homography';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { marksOf, outlineFromPhoto, type PhotoFault, type PhotoOutline } from '@/shared/outline/outline-from-photo';
import { type PhotoDoubt, photoDoubt } from '@/shared/outline/photo-doubt';
import { sayMiss } from '@/shared/outline/say-miss';
import type { Pixel } from '@/shared/outline/sheet-marks';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

export type WorkedOut = {
  readonly fault?: PhotoFault;
  readonly made?: PhotoOutline & { readonly doubt: PhotoDoubt; readonly chalk: readonly [Pixel, Pixel] | undefined };
};

/** What the marks alone are worth: their fault, or how true they are. */
export function workOutMarks(typed: TypedMeasuring, prefer: UnitSystem): { fault?: PhotoFault; atMarks?: number } {
  const measuring = measuringOf(typed, prefer);
  if (!measuring) return {};
  const marks = marksOf(measuring);
  if (!marks.ok) return { fault: { code: marks.error.code, mark: marks.error.corner } };
  return { atMarks: photoDoubt(marks.value, []).atMarks };
}

/** The outline as far as it is tapped; nothing yet with fewer than three points. */
export function workOut(typed: TypedMeasuring, prefer: UnitSystem): WorkedOut {
  const measuring = measuringOf(typed, prefer);
  if (!measuring || typed.edge.length < 3) return {};
  const made = outlineFromPhoto(measuring);
  if (!made.ok) return { fault: made.error };
  const { outline, map, marks } = made.value;
  const { left, right } = boundsOf(outline.ring);
  const back = invertHomography(map);
  const [from, to] = [left, right].map((x) => straightenPixel(back, { x: x / 1000, y: 0 }));
  const chalk = from && to ? ([from, to] as const) : undefined;
  return { made: { ...made.value, doubt: photoDoubt(marks, typed.edge), chalk } };
}

/** "2,400.3 mm long, 702.1 mm at its widest", to the tenth that is drawn. */
export function saySize({ outline }: PhotoOutline, prefer: UnitSystem): string {
  const { left, right, bottom, top } = boundsOf(outline.ring);
  const say = (um: number) => printLength(nanometres(um * 1000), { prefer, style: 'inches' }).replace('≈ ', '');
  return `About ${say(right - left)} long, ${say(top - bottom)} at its widest.`;
}

/** How far off it may be, and what to do where that is much: more than a hundredth of the slab's length. */
export function sayDoubt({ outline, doubt }: PhotoOutline & { doubt: PhotoDoubt }, prefer: UnitSystem): string {
  const { left, right } = boundsOf(outline.ring);
  const much = doubt.most * 1000 > (right - left) / 100;
  const off = `A mark is true to about ${sayMiss(doubt.atMarks, prefer)} at the sheet; the doubt grows away from it, to about ${sayMiss(doubt.most, prefer)} at point ${doubt.point + 1}.`;
  return much ? `${off} That is much: lay a larger sheet, or lay it nearer the middle, and stand higher.` : off;
}
