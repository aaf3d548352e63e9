import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Precision } from '@/shared/calendar/precision';
import type { Limit } from '@/shared/shelf-life/types/limit';
import type { MaterialSystem, Policy } from '@/shared/shelf-life/types/policy';

export type Weight = 'stop' | 'care' | 'note';

/** A test pour of two lots together, as one half of the pair knows it. */
export type Trial = {
  readonly id: string;
  /** `container` where it was of this one container of its lot. */
  readonly scope: 'lot' | 'container';
  /** False where this half was found bad after it: a pass then carries no limit any more. */
  readonly stands: boolean;
};

/** The other part of a two-part system, already in hand for the job. */
export type PairedPart = {
  readonly systemId: string;
  readonly systemName: string;
  readonly part: 'A' | 'B';
  readonly label: string;
  /** Every test pour that it was part of together with another lot, as `trialsOf` gives them. */
  readonly trials?: readonly Trial[];
};

export type Contradiction =
  | 'opened-in-future'
  | 'made-in-future'
  | 'opened-before-made'
  | 'limit-before-made'
  | 'inspected-in-future';

/** One reason behind a verdict. Whether a date stops a job or asks for care depends on whose piece it is. */
export type Reason =
  | {
      readonly code: 'recalled' | 'quarantine' | 'on-hold';
      readonly weight: 'stop';
      readonly scope: 'lot' | 'container';
    }
  | { readonly code: 'gelled' | 'skinned-through' | 'frozen-ruined'; readonly weight: 'stop' }
  | {
      readonly code: 'wrong-system';
      readonly weight: 'stop';
      readonly because: 'other-system' | 'same-part' | 'no-system';
      readonly pairedWith: PairedPart;
      readonly own?: MaterialSystem;
    }
  | {
      readonly code: 'pair-failed';
      readonly weight: 'stop' | 'care';
      readonly on: CalendarDate;
      /** The label of the other half. */
      readonly other: string;
    }
  | { readonly code: 'empty'; readonly weight: 'stop' }
  | { readonly code: 'past-limit'; readonly weight: 'stop' | 'care'; readonly limit: Limit; readonly daysPast: number }
  | { readonly code: 'date-unknown'; readonly weight: 'stop' | 'care' }
  | {
      readonly code: 'inspection-failed';
      readonly weight: 'stop' | 'care';
      readonly on: CalendarDate;
      readonly kind: 'inspection' | 'test-pour';
      /** It was tried together with another lot, and which of the two was bad is not known. */
      readonly together?: true;
    }
  /** The surface is of these lots already, by their codes: '' where one has none. */
  | { readonly code: 'other-lot'; readonly weight: 'care'; readonly lots: readonly string[] }
  | { readonly code: 'facts-contradict'; readonly weight: 'care'; readonly which: Contradiction }
  | { readonly code: 'day-of-use-past'; readonly weight: 'care'; readonly dayOfUse: CalendarDate }
  | { readonly code: 'short'; readonly weight: 'care'; readonly left: number; readonly asked: number }
  | {
      readonly code: 'extended-by-inspection';
      readonly weight: 'care';
      readonly limit: Limit;
      readonly instead?: Limit;
      /** The label of the other half, where it was tried together with that and is carried only with it. */
      readonly other?: string;
    }
  | { readonly code: 'limit-near'; readonly weight: 'care'; readonly limit: Limit; readonly daysLeft: number }
  | { readonly code: 'opened-life-unknown'; readonly weight: 'care'; readonly on: CalendarDate }
  | { readonly code: 'opened-day-guessed'; readonly weight: 'care'; readonly on: CalendarDate }
  | {
      readonly code: 'date-unconfirmed';
      readonly weight: 'care';
      readonly which: 'use-by' | 'best-before' | 'made-on';
      readonly date: CalendarDate;
      readonly precision: Precision;
    }
  | {
      readonly code: 'crystals' | 'haze' | 'settled' | 'darkened' | 'frozen-thaw';
      readonly weight: 'care';
    }
  | { readonly code: 'stored-out-of-range'; readonly weight: 'care'; readonly storage?: Policy['storage'] }
  | {
      readonly code: 'inspection-does-not-extend';
      readonly weight: 'note';
      readonly limit: Limit;
      /** The label of the other half, where it is the test pour of the two that does not. */
      readonly other?: string;
    }
  | { readonly code: 'house-default'; readonly weight: 'note'; readonly limit: Limit };

export type ReasonCode = Reason['code'];
