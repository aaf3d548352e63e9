import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Life } from '@/shared/calendar/life';
import type { Precision } from '@/shared/calendar/precision';
import type { Basis } from '@/shared/shelf-life/types/policy';

/** In the order that settles a tie: of two limits on the same day, the earlier in this list governs. */
export const LIMIT_BASES = ['use-by', 'best-before', 'stated-life', 'opened-life', 'inspection'] as const;
export type LimitBasis = (typeof LIMIT_BASES)[number];

/** A day up to which a container is good, and what it was computed from. The last good day is itself good. */
export type Limit = {
  readonly basis: LimitBasis;
  readonly lastGoodDay: CalendarDate;
  readonly from: {
    /** The printed date, the day made, the day opened or the day inspected, as used. */
    readonly start: CalendarDate;
    readonly precision: Precision;
    readonly life?: Life;
    readonly source: Basis | 'inspection';
    readonly inspectionId?: string;
    /** It is a test pour of two lots together, and counts for the two of them alone. */
    readonly together?: true;
  };
  /** Only an effective limit can govern; the others are shown with what set them aside. */
  readonly effective: boolean;
  /**
   * `inspection`: a passed inspection reaches further. `printed-date`: a house default gives way to the label.
   * `not-needed`: an inspection that extends nothing; it never shortens.
   */
  readonly supersededBy?: 'inspection' | 'printed-date' | 'not-needed';
};
