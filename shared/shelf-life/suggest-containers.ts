import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { assess } from '@/shared/shelf-life/assess';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { PairedPart, ReasonCode } from '@/shared/shelf-life/types/reason';
import type { Suggestion, SuggestionWhy, Take } from '@/shared/shelf-life/types/suggestion';
import type { Purpose } from '@/shared/shelf-life/types/verdict';

export type SuggestInput = {
  /** Containers of one and the same material; each container once, a repeated id counts once. */
  readonly candidates: readonly Candidate[];
  /** How much is wanted, at least 1; without it the single best container is offered whole. */
  readonly asked?: number;
  readonly dayOfUse: CalendarDate;
  readonly today: CalendarDate;
  readonly purpose: Purpose;
  readonly colourShows: boolean;
  /** The lot the job already uses: where colour shows, it comes first. */
  readonly lotId?: string;
  /** True when some of that lot is already counted on, so that any other lot would be a mix. */
  readonly lotInUse?: boolean;
  readonly pairedWith?: PairedPart;
};

type Option = Omit<Take, 'take'> & { readonly left: number; readonly sealed: boolean };

/** A container with one of these is not offered, whatever its word for an own piece or a test. */
const DOES_NOT_REACH: readonly ReasonCode[] = ['past-limit', 'date-unknown', 'inspection-failed', 'pair-failed'];

/**
 * The best set of containers for an amount on a day. Only those judged Use or Care that reach the day are offered: never
 * a Stop, and for no purpose one that is past, unknown or failed its inspection.
 *
 * They are taken in this order, each emptied before the next, until the amount is reached:
 * 1. Use before Care;
 * 2. first to expire first, one without a limit last;
 * 3. opened before sealed;
 * 4. the fuller first, to open fewer;
 * 5. by label, then id, so that the answer is the same every time.
 *
 * Where colour shows, the whole amount comes from one lot if any lot can give it: the job's own lot first, else the lot
 * whose first container comes first in the order above. Only when none can are lots mixed, the job's own lot still first
 * and the others each finished before the next, and `why` says so.
 *
 * FEFO, first expired first out: WHO good distribution practices for medical products; 21 CFR 211.150(a), oldest stock
 * first. Example: 900 wanted, tins of 600 (to 1 Mar) and 500 (to 1 Feb): 500, then 400.
 */
export function suggestContainers(input: SuggestInput): Suggestion {
  const { asked, colourShows, lotId, lotInUse = false } = input;
  if (asked !== undefined && (!Number.isSafeInteger(asked) || asked < 1)) {
    throw new RangeError(`The amount asked must be a whole count of at least 1, got ${asked}`);
  }
  const options = optionsOf(input).sort(inOrder);
  if (options.length === 0) return { containers: [], withThis: 0, reaches: false, why: 'none-good' };

  const lots = [...new Set(options.map((one) => one.lotId))].sort((a, b) => Number(b === lotId) - Number(a === lotId));
  const ofLot = (lot: string) => options.filter((one) => one.lotId === lot);
  const wanted = asked ?? 1;
  const enough = lots.find((lot) => ofLot(lot).reduce((sum, one) => sum + one.left, 0) >= wanted);
  const single = lotInUse ? (enough === lotId ? enough : undefined) : enough;
  const queue = !colourShows ? options : single !== undefined ? ofLot(single) : lots.flatMap(ofLot);

  const containers: Take[] = [];
  let missing = wanted;
  for (const { left, sealed: _, ...one } of queue) {
    if (missing === 0) break;
    const take = Math.min(left, missing);
    containers.push({ ...one, take: asked === undefined ? left : take });
    missing -= take;
  }
  const reaches = missing === 0;
  return {
    containers,
    withThis: 0,
    reaches,
    why: whyOf(containers, reaches, colourShows, lotInUse ? lotId : undefined),
  };
}

function optionsOf(input: SuggestInput): Option[] {
  const { dayOfUse, today, purpose, pairedWith } = input;
  const byId = new Map(input.candidates.map((one) => [one.container.id, one]));
  return [...byId.values()].flatMap((candidate): Option[] => {
    const { word, reasons, governing } = assess({ ...candidate, dayOfUse, today, purpose, pairedWith });
    if (word === 'stop' || reasons.some((reason) => DOES_NOT_REACH.includes(reason.code))) return [];
    const { container, lot } = candidate;
    return [
      {
        containerId: container.id,
        lotId: lot.id,
        label: container.label,
        lastGoodDay: governing?.lastGoodDay,
        word,
        left: container.left,
        sealed: container.opened === undefined,
      },
    ];
  });
}

function inOrder(a: Option, b: Option): number {
  return (
    Number(a.word === 'care') - Number(b.word === 'care') ||
    byText(a.lastGoodDay ?? '9999', b.lastGoodDay ?? '9999') ||
    Number(a.sealed) - Number(b.sealed) ||
    b.left - a.left ||
    byText(a.label, b.label) ||
    byText(a.containerId, b.containerId)
  );
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function whyOf(
  takes: readonly Take[],
  reaches: boolean,
  colourShows: boolean,
  inUse: string | undefined,
): SuggestionWhy {
  if (!reaches) return 'not-enough';
  if (!colourShows) return 'first-to-expire';
  const lots = new Set(takes.map((one) => one.lotId));
  if (inUse !== undefined) lots.add(inUse);
  return lots.size > 1 ? 'lots-mixed' : 'one-lot';
}
