import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Life } from '@/shared/calendar/life';
import type { ExactInteger } from '@/shared/units/exact-integer';
import type { StockUnit } from '@/shared/units/stock-unit';

/** A whole count of whichever small unit the stock is kept in; `Milligrams`, `Microlitres` and `Pieces` are such. */
export type StockAmount = ExactInteger<StockUnit>;

/** What one open job wants of one material on one day: a part of a lift, a coat of finish. */
export type AllocationNeed = {
  readonly id: string;
  readonly jobName: string;
  /** What it is for, in words: `part A for lift 1`. */
  readonly what: string;
  /** The day of use, on which what is sealed is opened for it. One that has passed counts as today. */
  readonly on: CalendarDate;
  /** What is used has to be within its limit on this day: the last lift of its pour, the last coat of its finish; `on` where none is given. */
  readonly goodTo?: CalendarDate | undefined;
  readonly unit: StockUnit;
  /** At least 1. */
  readonly amount: StockAmount;
  /** Any of these products will do. */
  readonly productIds: readonly string[];
  /** Only material of this two-part system will do. */
  readonly systemKey?: string | undefined;
  readonly part?: 'A' | 'B' | undefined;
  /** One visible surface, named alike by every need that goes on it: one lot of each material is wanted for it. */
  readonly surface: string;
  /** The need for the other part of the same batch. All needs so joined get material of one system. */
  readonly pairsWith?: string | undefined;
  /** Its whole batch comes from one set of the maker's, part A and part B alike. */
  readonly setDemanded?: boolean | undefined;
};

/** A tin or jug on hand, with its limits already worked out. */
export type AllocationContainer = {
  readonly id: string;
  readonly label: string;
  readonly productId: string;
  readonly unit: StockUnit;
  readonly systemKey?: string | undefined;
  readonly part?: 'A' | 'B' | undefined;
  readonly lotId: string;
  readonly lotWords: string;
  readonly setId?: string | undefined;
  readonly left: StockAmount;
  readonly sealed: boolean;
  /** The last good day by the governing limit, itself good; none where it keeps. */
  readonly lastGoodDay?: CalendarDate | undefined;
  /** Counted from the day a sealed one is first opened; none where opening does not age it. */
  readonly openedLife?: Life | undefined;
  /** On hold, in quarantine or recalled, itself or its lot. */
  readonly held: boolean;
  readonly place: string;
  /** Fixed promises: they are taken off what is left. */
  readonly promisedTo?: readonly { readonly jobName: string; readonly amount: StockAmount }[] | undefined;
  /** What a million small units (1 kg, 1 L) cost, in minor units of money. */
  readonly price?: number | undefined;
};

/** A lot that is on a surface already, or promised to it: whatever is allotted besides, it stays there. */
export type UsedLot = Pick<AllocationNeed, 'surface' | 'part'> & {
  readonly productId: string;
  readonly lotId: string;
};

/** Everything an allocation is worked out from. */
export type AllocationAsk = {
  readonly today: CalendarDate;
  readonly needs: readonly AllocationNeed[];
  readonly containers: readonly AllocationContainer[];
  /** Stock left over whose limit falls on this day or before is counted as waste. */
  readonly wasteUntil: CalendarDate;
  /** A need and a container that are not to come together. */
  readonly barred?: readonly { readonly needId: string; readonly containerId: string }[] | undefined;
  /** What the surfaces of the needs are of already; others are passed over. */
  readonly used?: readonly UsedLot[] | undefined;
};

/** So much of one container for one need. */
export type Take = { readonly needId: string; readonly containerId: string; readonly amount: StockAmount };
