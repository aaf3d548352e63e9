import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { flattenWhole } from '@/shared/wood/flatten-piece';
import { judgePiece, type PieceReason } from '@/shared/wood/judge-piece';

/** What stands between a piece the top fits in and the top itself. */
export type FitCondition =
  | PieceReason
  /** So much thinner, flattened, than the top is to be. */
  | { readonly code: 'too-thin'; readonly by: Nanometres; readonly left: Nanometres }
  /** Only heartwood was asked for, and nobody measured how deep the sapwood is. */
  | { readonly code: 'sapwood-unknown' }
  /** Its outline was taken from a photo, which may be off by more than there is to spare. */
  | { readonly code: 'photo-no-truer'; readonly error: Nanometres; readonly spare: Nanometres }
  /** So many marks were made before it was measured as it is now. */
  | { readonly code: 'marks-of-before'; readonly count: number }
  /** The finished top weighs more than it may, in grams. */
  | { readonly code: 'too-heavy'; readonly grams: number; readonly by: number }
  | { readonly code: 'weight-unknown' }
  /** Dry after the day asked for; null is never, in the air it stands in. */
  | { readonly code: 'dry-late'; readonly on: CalendarDate | null; readonly latest: CalendarDate | null }
  | { readonly code: 'dry-unknown'; readonly because: 'no-readings' | 'no-air' | 'room-too-damp' | 'too-few' }
  /** Taken alone it would leave its sister without one. */
  | { readonly code: 'splits-pair'; readonly sister: string };

/** What is asked beside the shape. */
export type AskedBeside = {
  /** Of the finished top. */
  readonly thickness?: Nanometres | undefined;
  /** The most it may read, in tenths of a per cent. */
  readonly mostTenths?: number | undefined;
};

/**
 * The thickness left when the usual passes have flattened it whole, with the warp that was measured, or none. A sheet is
 * flat as it comes.
 */
export function thicknessLeft(line: PieceLine): Nanometres {
  const { form, thicknessNm, lengthNm, widthMiddleNm, cupNm, bowNm, twistNm } = line;
  if (form === 'sheet') return thicknessNm;
  const none = nanometres(0);
  const warp = { cup: cupNm ?? none, bow: bowNm ?? none, twist: twistNm ?? none };
  return flattenWhole({ thickness: thicknessNm, width: widthMiddleNm, length: lengthNm, warp }).value.left;
}

/** The wettest reading of the newest day it was read, in tenths of a per cent, and that day. */
export function newestWettest({ readings }: Pick<PieceLine, 'readings'>) {
  const takenOn = readings
    .map((each) => each.takenOn)
    .sort()
    .at(-1);
  if (takenOn === undefined) return undefined;
  const those = readings.filter((each) => each.takenOn === takenOn);
  return { takenOn, mcTenths: Math.max(...those.map((each) => each.correctedTenths ?? each.mcTenths)) };
}

/**
 * Every condition on a piece, the weightiest first: promised or held, then too thin, too wet by the moisture asked for,
 * what was wrong with it as it was received, and no reading or an old one. Where no moisture is asked for, no reading is.
 */
export function conditionsOfPiece(line: PieceLine, asked: AskedBeside, today: CalendarDate): FitCondition[] {
  // Checks that are marked are trimmed or kept clear of by their depth: only unmarked ones are still to be looked for.
  const isMarked =
    line.marks.endChecks.length > 0 || line.marks.defects.some(({ kind }) => kind === 'check' || kind === 'split');
  const reasons = judgePiece(line.facts, today).reasons.filter(({ code }) => code !== 'checked' || !isMarked);
  const stops = reasons.filter((reason) => reason.weight === 'stop');
  const cares = reasons.filter((reason) => reason.weight === 'care' && reason.code !== 'wet');
  const isOfReading = (reason: PieceReason) => reason.code === 'no-reading' || reason.code === 'reading-old';
  const left = thicknessLeft(line);
  const { thickness, mostTenths } = asked;
  const newest = newestWettest(line);
  return [
    ...stops,
    ...(thickness !== undefined && left < thickness
      ? [{ code: 'too-thin' as const, by: nanometres(thickness - left), left }]
      : []),
    ...(mostTenths !== undefined && newest && newest.mcTenths > mostTenths
      ? [{ code: 'wet' as const, weight: 'care' as const, mcTenths: newest.mcTenths, mostTenths }]
      : []),
    ...(line.marksOfBefore.length > 0 ? [{ code: 'marks-of-before' as const, count: line.marksOfBefore.length }] : []),
    ...cares.filter((reason) => !isOfReading(reason)),
    ...(mostTenths === undefined ? [] : cares.filter(isOfReading)),
  ];
}
