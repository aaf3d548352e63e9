import { nameOf } from '@/app/_server/needs/need-name';
import type { StoodNeeds } from '@/app/_server/needs/stand-needs';
import type { NeedFacts } from '@/app/_server/needs/standing-needs';
import type {
  AllocationAsk,
  AllocationContainer,
  AllocationNeed,
  StockAmount,
  UsedLot,
} from '@/shared/allocation/allocation-ask';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { inUnit } from '@/shared/promise/in-unit';
import type { OnHand } from '@/shared/promise/material-need';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { assess } from '@/shared/shelf-life/assess';
import { exactInteger } from '@/shared/units/exact-integer';
import type { StockUnit } from '@/shared/units/stock-unit';

/** What passes its limit within this time without being used counts as waste, even after the last need. */
const WASTE_DAYS = 90;

type ProductUnits = ReadonlyMap<number, StockUnit>;

const amountOf = (value: number): StockAmount => exactInteger<StockUnit>(value);
const NEVER = '9999-12-31' as CalendarDate;

/**
 * The needs that are still open and not yet promised, and the stock that could meet them, as the allocation takes them:
 * both in one unit each, promises fixed, with the lots that their surfaces are of already. Two-part resin is counted by mass; what is counted by volume and has no density
 * cannot be, and is left out (`uncounted`).
 */
export function allocationAskOf(
  stood: StoodNeeds,
  places: ReadonlyMap<number, string>,
  { today, systemsOfSets }: { today: CalendarDate; systemsOfSets: ReadonlySet<number> },
): { ask: AllocationAsk; uncounted: readonly number[] } {
  const ofSystems = new Set(stood.stock.flatMap((one) => (one.candidate.policy.system ? one.productId : [])));
  const units: ProductUnits = new Map(
    [...stood.products.values()].map(({ id, unit, density }) => [
      id,
      ofSystems.has(id) && unit === 'uL' && density !== undefined ? 'mg' : unit,
    ]),
  );
  const containers = stood.stock.map((one) => containerOf(one, places.get(one.stockId) ?? '', stood, units, today));
  const needs = stood.needs.flatMap((each) => openNeed(each, stood, units));
  const last =
    needs
      .map(({ on }) => on)
      .sort()
      .at(-1) ?? today;
  const horizon = addDays(today, WASTE_DAYS);
  const pairs = new Map(needs.map((need) => [need.id, need]));
  return {
    ask: {
      today,
      needs: needs.map(({ liftId, systemId, ...need }) => {
        const other = needs.find((one) => liftId !== null && one.liftId === liftId && one.part !== need.part);
        return {
          ...need,
          ...(other && pairs.has(other.id) && { pairsWith: other.id }),
          ...(systemId !== null && systemsOfSets.has(systemId) && { setDemanded: true }),
        };
      }),
      containers: containers.flatMap((one) => one ?? []),
      wasteUntil: [last, horizon].sort().at(-1) ?? horizon,
      used: stood.needs.flatMap((each) => lotsOf(each, stood)),
    },
    uncounted: stood.stock.flatMap((one, nr) => (containers[nr] ? [] : [one.stockId])),
  };
}

type OpenNeed = AllocationNeed & { readonly liftId: number | null; readonly systemId: number | null };

function openNeed(
  { need, used, standing }: StoodNeeds['needs'][number],
  { productsOf }: StoodNeeds,
  units: ProductUnits,
): OpenNeed[] {
  if (need.kind === 'wood' || need.stepDone || need.liftPoured) return [];
  const reserved = standing.reserved.reduce((sum, part) => sum + part.amount, 0);
  const open = need.amount - used - reserved;
  const productIds = (productsOf.get(need.id) ?? []).filter((id) => units.get(id) === need.unit);
  if (open <= 0) return [];
  return [
    {
      id: String(need.id),
      jobName: need.job,
      what: wordsOf(need),
      on: need.on,
      goodTo: need.goodTo,
      unit: need.unit,
      amount: amountOf(open),
      productIds: productIds.map(String),
      ...(need.system && { systemKey: String(need.system.id), part: need.system.part }),
      surface: surfaceOf(need),
      liftId: need.liftId,
      systemId: need.system?.id ?? null,
    },
  ];
}

/** Needs without words for it are each a surface of their own. */
const surfaceOf = ({ id, jobId, surface }: NeedFacts) => (surface ? `${jobId} ${surface}` : `need ${id}`);

/** The lots of a need's surface that are settled: those it was taken from, and those that are promised to it. */
function lotsOf({ need, lots, standing }: StoodNeeds['needs'][number], { stock }: StoodNeeds): UsedLot[] {
  const promised = standing.reserved.flatMap(({ stockId }) => {
    const one = stock.find((each) => each.stockId === stockId);
    return one ? [{ productId: one.productId, lotId: one.candidate.lot.id }] : [];
  });
  return [...lots, ...promised].map(({ productId, lotId }) => ({
    surface: surfaceOf(need),
    part: need.system?.part,
    productId: String(productId),
    lotId,
  }));
}

/** "Deep pour, part A, for Lift 2". */
function wordsOf(need: NeedFacts): string {
  const name = nameOf(need);
  if (!need.step) return name;
  // A coat is called by its finish already.
  return need.step.startsWith(name) ? need.step : `${name}, for ${need.step}`;
}

function containerOf(
  one: OnHand,
  place: string,
  { products, needs }: StoodNeeds,
  units: ProductUnits,
  today: CalendarDate,
): AllocationContainer | undefined {
  const unit = units.get(one.productId);
  const left = unit && inUnit(one.left, one.unit, unit, one.density, 'down');
  const product = products.get(one.productId);
  if (unit === undefined || left === undefined || left <= 0 || !product) return undefined;
  const { policy, lot, container } = one.candidate;
  const { governing, reasons } = assess({ ...one.candidate, purpose: 'client', dayOfUse: today, today });
  const jobOf = new Map(needs.map(({ need }) => [need.jobId, need.job]));
  // Its date is the allocation's to weigh; whatever else stops it stops it on any day.
  const isStopped = reasons.some(({ code, weight }) => weight === 'stop' && code !== 'past-limit');
  const openedLife = container.opened ? undefined : (container.statedOpenedLife ?? policy.openedLife);
  return {
    id: String(one.stockId),
    label: printOwnLabel(one.label as OwnLabelCode),
    productId: String(one.productId),
    unit,
    ...(policy.system && { systemKey: policy.system.id, part: policy.system.part }),
    lotId: lot.id,
    lotWords: lot.code ? `lot ${lot.code}` : 'a lot without a code',
    // Makers print one batch code on both halves of a set. Common practice.
    ...(lot.code && { setId: lot.code }),
    left: amountOf(left),
    sealed: container.opened === undefined,
    ...(governing && governing.lastGoodDay < NEVER && { lastGoodDay: governing.lastGoodDay }),
    ...(openedLife && { openedLife }),
    held: isStopped,
    place,
    promisedTo: one.promised.flatMap((each) => {
      const amount = inUnit(each.amount, one.unit, unit, one.density, 'up');
      return amount
        ? [{ jobName: jobOf.get(each.jobId) ?? 'another job', amount: amountOf(Math.min(amount, left)) }]
        : [];
    }),
    ...priceOf(one, left),
  };
}

/** What a million small units cost, where the container has a price. */
function priceOf({ shares }: OnHand, left: number): { price?: number } {
  if (!shares) return {};
  const whole = shares.free + shares.promises.reduce((sum: number, each) => sum + each, 0);
  return { price: Math.round((whole * 1e6) / left) };
}
