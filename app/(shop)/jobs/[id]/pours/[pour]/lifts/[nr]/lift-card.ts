import type { SaidOfBelow } from '@/app/_server/pours/join-below';
import type { LiftLine } from '@/app/_server/pours/lift-rows';
import type { PourLine } from '@/app/_server/pours/read-pour';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { isNearTarget } from '@/shared/pour/is-near-target';
import type { LiftBelow } from '@/shared/pour/join-at';
import type { Parts, ResinSheet } from '@/shared/pour/resin-sheet';
import { USUAL_TOLERANCE_TENTHS, type WeighedRatio, weighedRatio } from '@/shared/pour/weighed-ratio';
import type { Purpose } from '@/shared/shelf-life/types/verdict';
import type { Nanometres } from '@/shared/units/nanometres';
import { type Milligrams, milligrams } from '@/shared/units/stock-unit';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

export type CardPart = {
  part: 'A' | 'B';
  /** What is to be weighed: of part B as much as the part A that is in asks for. */
  target: Milligrams;
  weighed: { entryId: number; label: string; lot: string | null; mass: Milligrams }[];
  sum: Milligrams;
  done: boolean;
  /** Done, and further off what was planned than the sheet allows. */
  isOff: boolean;
};

export type CardBatch = {
  batch: number;
  parts: [CardPart, CardPart];
  ratio?: WeighedRatio;
  /** When its second part went in: the clock runs from then. */
  mixedAt?: string;
};

export type LiftCard = {
  jobId: number;
  job: string;
  purpose: Purpose;
  pourId: number;
  pour: string;
  system: string;
  liftId: number;
  nr: number;
  lastLift: CalendarDate;
  batches: CardBatch[];
  poured: LiftLine['poured'] | null;
  toleranceTenths: number;
  /** What of the sheet the card minds, whatever the room turns out to be. */
  sheet: Pick<ResinSheet, 'from' | 'depths' | 'potLives' | 'leastRoom' | 'mostRoom'>;
  /** The room as it was measured at pouring, or else as it was planned. */
  room: TenthsCelsius;
  depth: Nanometres;
  mass: Milligrams;
  /** Its largest batch. */
  largest: Milligrams;
  /** The lift below it that is not poured yet. */
  below: number | null;
  /** The one it is poured on, and what was said of that while this one was weighed or poured. */
  on: LiftBelow | null;
  said: SaidOfBelow;
  isOpen: boolean;
};

/** A lift as its mix card shows it, with the one it is poured on. */
export function liftCard(pour: PourLine, lift: LiftLine, { on, said }: Pick<LiftCard, 'on' | 'said'>): LiftCard {
  const { kept } = pour;
  const { sheet, figures } = kept;
  const { parts } = kept.plan.ratio;
  const toleranceTenths = sheet.toleranceTenths ?? USUAL_TOLERANCE_TENTHS;
  const largest = milligrams(Math.max(...lift.batches.map(({ total }) => total)));
  const mass = milligrams(lift.batches.reduce((sum, { total }) => sum + total, 0));
  const { from, depths, potLives, leastRoom, mostRoom } = sheet;
  const below = pour.lifts.find(({ nr, poured }) => nr < lift.nr && !poured);
  return {
    jobId: pour.job.id,
    job: pour.job.name,
    purpose: pour.job.purpose,
    pourId: pour.id,
    pour: pour.name,
    system: pour.system.name,
    liftId: lift.id,
    nr: lift.nr,
    lastLift: pour.lastLift,
    batches: lift.batches.map((_, row) => cardBatch(lift, row + 1, { parts, toleranceTenths, step: figures.step })),
    poured: lift.poured ?? null,
    toleranceTenths,
    sheet: { from, depths, potLives, leastRoom, mostRoom },
    room: lift.poured?.room ?? figures.room,
    depth: lift.depth,
    mass,
    largest,
    below: below?.nr ?? null,
    on,
    said: { ...said, ...lift.poured?.below },
    isOpen: pour.job.state === 'open',
  };
}

type By = { parts: Parts; toleranceTenths: number; step: Milligrams };

export function cardBatch(lift: Pick<LiftLine, 'batches' | 'weighed'>, batch: number, by: By): CardBatch {
  const planned = lift.batches[batch - 1];
  const here = lift.weighed.filter((each) => each.batch === batch);
  const inOf = (part: 'A' | 'B') => here.filter((each) => each.part === part);
  const sumOf = (part: 'A' | 'B') => milligrams(inOf(part).reduce((sum, { mass }) => sum + mass, 0));
  const [a, b] = [sumOf('A'), sumOf('B')];
  const isIn = (sum: number, target: number) => sum > 0 && sum >= target * (1 - by.toleranceTenths / 1000);
  const targetA = planned?.a ?? milligrams(0);
  const aDone = isIn(a, targetA);
  // What really went in of A decides how much B belongs to it, on the scale's step.
  const forA = milligrams(Math.round((a * by.parts.b) / by.parts.a / by.step) * by.step);
  const targetB = aDone && a !== targetA && forA > 0 ? forA : (planned?.b ?? milligrams(0));
  const line = (part: 'A' | 'B', target: Milligrams, sum: Milligrams, done: boolean): CardPart => ({
    part,
    target,
    sum,
    done,
    // Of part B the ratio says it.
    isOff: part === 'A' && done && !isNearTarget(sum, target, by),
    weighed: inOf(part).map(({ entryId, label, lot, mass }) => ({ entryId, label, lot, mass })),
  });
  const ratio = weighedRatio(a, b, by.parts, by.toleranceTenths);
  const bDone = isIn(b, targetB);
  const mixedAt = mixedSince(here);
  return {
    batch,
    parts: [line('A', targetA, a, aDone), line('B', targetB, b, bDone)],
    ...(ratio && { ratio }),
    ...(mixedAt && { mixedAt }),
  };
}

/** When both parts were first in the bucket. */
function mixedSince(here: LiftLine['weighed']): string | undefined {
  const first = (part: 'A' | 'B') => here.find((each) => each.part === part)?.at;
  const [a, b] = [first('A'), first('B')];
  return a && b ? [a, b].sort().at(-1) : undefined;
}

/** The part to be weighed next; undefined where everything is in. */
export function nextPart(batches: readonly CardBatch[]): { batch: number; part: 'A' | 'B' } | undefined {
  for (const { batch, parts } of batches) {
    const open = parts.find(({ done }) => !done);
    if (open) return { batch, part: open.part };
  }
  return undefined;
}
