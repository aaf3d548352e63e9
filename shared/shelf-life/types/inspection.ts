import type { CalendarDate } from '@/shared/calendar/calendar-date';

/**
 * A look at the material, or a small pour of it, with its outcome. A passed one extends only when it says until when. One
 * of the lot speaks for every container of the lot that was sealed; one of a container speaks for that container alone.
 * A list of them is in the order in which they were written, which is the order of those made on one day.
 */
export type Inspection = {
  readonly id: string;
  readonly on: CalendarDate;
  readonly passed: boolean;
  readonly validUntil?: CalendarDate;
  readonly kind: 'inspection' | 'test-pour';
  readonly scope: 'lot' | 'container';
  readonly containerId?: string;
  /**
   * There where it was tried together with a lot of the other part. It then speaks of the two together; by itself it tells
   * only that one of the two may be bad, where it failed. `trial` is the same in the inspection that the other lot has of it.
   */
  readonly together?: { readonly trial: string; readonly lotId: string };
};
