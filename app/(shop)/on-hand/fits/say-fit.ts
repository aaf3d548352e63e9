import type { FitCondition } from '@/app/_server/fits/conditions-of-piece';
import type { JudgedPiece } from '@/app/_server/fits/what-fits';
import { isStraight } from '@/app/(shop)/on-hand/fits/is-straight';
import { onTheRule } from '@/app/(shop)/on-hand/fits/on-the-rule';
import { sayMass } from '@/app/(shop)/pieces/say-mass';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { Nearly } from '@/shared/fit/nearly';
import type { RankReason } from '@/shared/fit/rank-slabs';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import type { Nanometres } from '@/shared/units/nanometres';
import type { UnitSystem } from '@/shared/units/unit-system';
import { sayPieceReason } from '@/shared/wood/say-piece-reason';

type Sized = { readonly prefer: UnitSystem };

/** The words that stand on a drawing: `fits, 2 1/4 in to spare`, `fits, but strapped`, `nearly: 3 1/8 in too narrow at 61 in`. */
export function sayOnWood(
  { judged, conditions, outline }: Pick<JudgedPiece, 'judged' | 'conditions' | 'outline'>,
  sized: Sized,
): string {
  const { fit, spare } = judged;
  if (fit.answer === 'no') return 'does not fit';
  if (fit.answer === 'nearly') return sayNearly(fit.missing, isStraight(outline), sized);
  const [first] = conditions;
  if (first) {
    const more = conditions.length > 1 ? ` (and ${conditions.length - 1} more)` : '';
    return `fits, but ${shortCondition(first, sized)}${more}`;
  }
  return spare && !isHair(spare, sized) ? `fits, ${onTheRule(spare, 'down', sized.prefer)} to spare` : 'fits, just';
}

function isHair(length: Nanometres, { prefer }: Sized): boolean {
  return /^0 /.test(onTheRule(length, 'down', prefer));
}

/** What a nearly lacks most plainly: whichever of width and length is the smaller part of what was asked. */
export function leastMissing({ tooNarrow, tooShort, largest }: Nearly) {
  const narrow = tooNarrow ? tooNarrow.by / (tooNarrow.width + tooNarrow.by) : Infinity;
  const short = tooShort ? tooShort.by / (tooShort.length + tooShort.by) : Infinity;
  if (tooNarrow && narrow <= short) return { lacks: 'width', top: tooNarrow } as const;
  return tooShort ? ({ lacks: 'length', top: tooShort } as const) : ({ lacks: 'both', top: largest } as const);
}

function sayNearly(missing: Nearly, straight: boolean, { prefer }: Sized): string {
  const least = leastMissing(missing);
  if (least.lacks === 'both') return `nearly: ${saySize(least.top, prefer)} would fit`;
  const by = onTheRule(least.top.by, 'up', prefer);
  if (least.lacks === 'length') return `nearly: ${by} too short`;
  return straight
    ? `nearly: ${by} too narrow`
    : `nearly: ${by} too narrow at ${onTheRule(least.top.at, 'down', prefer)}`;
}

/** The tops a nearly would give: `Would give a top of 78 in × 31 1/2 in, or 66 in × 36 in.` */
export function sayWouldGive({ tooNarrow, tooShort, largest }: Nearly, { prefer }: Sized): string {
  const tops = [tooNarrow, tooShort, largest].flatMap((top) => (top ? [saySize(top, prefer)] : []));
  const [last, ...before] = [...new Set(tops)].reverse();
  return `Would give a top of ${before.length ? `${before.reverse().join(', ')} or ` : ''}${last}.`;
}

function saySize({ length, width }: { length: Nanometres; width: Nanometres }, prefer: UnitSystem): string {
  return `${onTheRule(length, 'down', prefer)} × ${onTheRule(width, 'down', prefer)}`;
}

/** What keeps a piece from any job: `in quarantine`. */
export function sayHold(hold: string): string {
  return hold === 'quarantine' ? 'in quarantine' : hold === 'recalled' ? 'recalled' : 'on hold';
}

function shortCondition(condition: FitCondition, { prefer }: Sized): string {
  switch (condition.code) {
    case 'promised-elsewhere':
      return `promised to ${condition.job}`;
    case 'held':
      return sayHold(condition.hold);
    case 'too-thin':
      return `${onTheRule(condition.by, 'up', prefer)} too thin`;
    case 'wet':
      return `reads ${condition.mcTenths / 10} %`;
    case 'no-reading':
      return 'moisture not read';
    case 'reading-old':
      return 'reading is old';
    case 'checked':
      return 'it has checks';
    case 'gone':
      return 'gone';
    case 'broken':
    case 'strapped':
    case 'twisted':
      return condition.code;
    case 'sapwood-unknown':
      return 'sapwood not measured';
    case 'photo-no-truer':
      return 'its photo is no truer than that';
    case 'marks-of-before':
      return 'marks not looked at since it was measured';
    case 'too-heavy':
      return `${sayMass(condition.by / 1000, prefer)} too heavy`;
    case 'weight-unknown':
      return 'weight not known';
    case 'dry-late':
      return 'not dry by then';
    case 'dry-unknown':
      return 'not known to be dry by then';
    case 'splits-pair':
      return 'it splits a pair';
    case 'live-edge-left':
    case 'live-edge-right':
      return 'live edge';
  }
}

/** How dates are said. */
export type SaidDates = { readonly today: CalendarDate; readonly order: DateOrder };

const DRY_UNKNOWN = {
  'no-readings': 'It was never read, so nobody can say when it is dry. Read it.',
  'no-air': 'The air it stands in is not in the book, so nobody can say when it is dry. Log the room.',
  'room-too-damp': 'It will not dry so far where it stands: the room is too damp. Move it.',
  'too-few': 'It was read too seldom to say when it is dry. Read it again.',
};

/** A condition as a sentence, and what to do about it. */
export function sayCondition(condition: FitCondition, { prefer, ...dates }: Sized & SaidDates): string {
  switch (condition.code) {
    case 'sapwood-unknown':
      return 'How deep its sapwood is was not measured: look where the heartwood ends before you lay out.';
    case 'photo-no-truer':
      return `Its outline is from a photo that may be off by ${onTheRule(condition.error, 'up', prefer)} where it is furthest from the sheet, and there is ${onTheRule(condition.spare, 'down', prefer)} to spare: measure it there before you cut.`;
    case 'marks-of-before':
      return `${condition.count === 1 ? 'A mark on it was' : `${condition.count} marks on it were`} made before it was measured as it is now. Look on its page whether they lie where they should.`;
    case 'too-heavy':
      return `The finished top weighs about ${sayMass(condition.grams / 1000, prefer)} of this wood: ${sayMass(condition.by / 1000, prefer)} more than asked.`;
    case 'weight-unknown':
      return 'What the top weighs of this wood is not known: its name may mean several, or no thickness was asked for.';
    case 'dry-late':
      return condition.on === null
        ? 'It is not dry within ten years where it stands. Move it.'
        : `Dry about ${sayDate(condition.on, dates)}${condition.latest ? `, by ${sayDate(condition.latest, dates)} at the latest four times of five` : ''}: later than asked.`;
    case 'dry-unknown':
      return DRY_UNKNOWN[condition.because];
    case 'splits-pair':
      return `It is half of a bookmatched pair: ${printOwnLabel(condition.sister as OwnLabelCode)} would be left alone.`;
  }
  if (condition.code === 'too-thin') {
    const [by, left] = [onTheRule(condition.by, 'up', prefer), onTheRule(condition.left, 'down', prefer)];
    return `Flattened it leaves ${left}: ${by} too thin.`;
  }
  if (condition.code === 'checked')
    return 'It has checks; how deep was not measured. Trim past them before you lay out.';
  const { says, todo } = sayPieceReason(condition);
  return todo ? `${says} ${todo}` : says;
}

/** Why a piece stands where it does, one short sentence for each reason that was asked for. */
export function sayRank(reasons: readonly RankReason[], asked: Sized & { readonly moisture: boolean }): string[] {
  return reasons.map((reason) => sayReason(reason, asked)).filter((says) => says !== '');
}

function sayReason(
  { about, standing, amount }: RankReason,
  { moisture, prefer }: Sized & { readonly moisture: boolean },
): string {
  switch (about) {
    case 'fit':
      return standing === 'for' ? '' : 'It comes after those the whole top fits in.';
    case 'promised':
      return standing === 'against' ? 'It is promised or held, so it comes after what is free.' : '';
    case 'pair':
      return 'It is half of a pair, so it comes after what splits none.';
    case 'river':
      return amount === undefined ? '' : `${sayArea(amount, prefer)} of the top is river; less goes first.`;
    case 'thickness':
      return standing === 'for' ? 'It is thick enough.' : 'It is too thin, so it comes after what is thick enough.';
    case 'dry':
      if (!moisture) return '';
      if (standing === 'unknown') return 'Its moisture today is not known, so it comes after what is known to be dry.';
      return standing === 'for' ? 'It is dry enough.' : 'It is not dry enough, so it comes after what is.';
    case 'waste':
      return amount === undefined
        ? ''
        : `It wastes ${sayArea(amount, prefer)} beyond the offcut kept; less goes first.`;
    case 'price':
      return standing === 'unknown' ? 'Its price is not in the book; a known price goes first.' : '';
    case 'weight':
      if (standing === 'unknown')
        return 'What it would weigh is not known, so it comes after what is known to be light enough.';
      return standing === 'for' ? 'It is light enough.' : 'It is too heavy, so it comes after what is light enough.';
  }
}

/** Square millimetres in square feet or square metres, to one or two places. */
function sayArea(squareMillimetres: number, prefer: UnitSystem): string {
  return prefer === 'imperial'
    ? `${(squareMillimetres / 92_903.04).toFixed(1)} sq ft`
    : `${(squareMillimetres / 1e6).toFixed(2)} m²`;
}
