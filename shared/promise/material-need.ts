import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { CostShares } from '@/shared/promise/share-cost';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Purpose } from '@/shared/shelf-life/types/verdict';
import type { GramsPerLitre } from '@/shared/units/density';
import type { MinorUnits } from '@/shared/units/minor-units';
import type { StockUnit } from '@/shared/units/stock-unit';

/** So much of a material that a job needs on a day. Amounts in the need's own small unit. */
export type MaterialNeed = {
  readonly id: number;
  readonly jobId: number;
  readonly purpose: Purpose;
  /** It must be here by this day. A day that has passed counts as today. */
  readonly on: CalendarDate;
  /** And good to this one, `on` or later: the last lift of its pour, the last coat of its finish; `on` where none is given. */
  readonly goodTo?: CalendarDate | undefined;
  readonly unit: StockUnit;
  readonly amount: number;
  /** Taken for it already. */
  readonly used: number;
  /** Any of these products will do. */
  readonly productIds: readonly number[];
  /** Needs with the same words go on one visible surface: one lot is wanted for them. */
  readonly surface: string;
  /** The lots that were taken for it already, the newest last: they are on the surface, and stay there. */
  readonly lotsUsed?: readonly string[] | undefined;
};

/** A container on hand, in its own small unit. */
export type OnHand = {
  readonly stockId: number;
  readonly label: string;
  readonly productId: number;
  readonly unit: StockUnit;
  readonly density?: GramsPerLitre | undefined;
  readonly left: number;
  readonly candidate: Candidate;
  /** Together at most `left`. */
  readonly promised: readonly { readonly jobId: number; readonly needId: number | null; readonly amount: number }[];
  /** What it cost, shared among those promises and the rest; none where it is not known. */
  readonly shares?: CostShares | undefined;
};

/** An order to come, in whole small units of its product. */
export type Coming = {
  readonly id: number;
  readonly productId: number;
  readonly unit: StockUnit;
  readonly density?: GramsPerLitre | undefined;
  readonly amount: number;
  readonly on: CalendarDate;
};

/** Some of a container for a need: `amount` in the need's unit, `stockAmount` in the container's. */
export type Part = {
  readonly stockId: number;
  readonly label: string;
  readonly amount: number;
  readonly stockAmount: number;
  readonly cost?: MinorUnits | undefined;
  readonly lastGoodDay?: CalendarDate | undefined;
};

/** How a need stands. `amount` = used + reserved + have + arriving + short, unless more was used or reserved than it needs. */
export type NeedStanding = {
  readonly needId: number;
  /** Promised to this job, and good on the day. */
  readonly reserved: readonly Part[];
  /** Promised to this job and not good on the day: it counts for nothing. */
  readonly failing: readonly Part[];
  /** Free and good on the day: what a press would promise, first to expire first. */
  readonly have: readonly Part[];
  /** Good on the day and promised to other jobs. */
  /** `stockId`: one of the things, for its refusal to be told. */
  readonly elsewhere: readonly { readonly jobId: number; readonly amount: number; readonly stockId: number }[];
  readonly arriving: readonly { readonly id: number; readonly amount: number; readonly on: CalendarDate }[];
  readonly short: number;
  /** Several lots would meet on one surface. */
  readonly lotsMixed: boolean;
  /** Containers that cannot be counted in the need's unit: their product has no density. */
  readonly uncounted: readonly string[];
};
