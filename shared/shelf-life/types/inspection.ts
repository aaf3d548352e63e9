import type { CalendarDate } from '@/shared/calendar/calendar-date';

/**
 * A look at the material, or a small pour of it, with its outcome. A passed one extends only when it says until when. One
 * of the lot speaks for every container of the lot that was sealed; one of a container speaks for that container alone.
 */
export type Inspection = {
  readonly id: string;
  readonly on: CalendarDate;
  readonly passed: boolean;
  readonly validUntil?: CalendarDate;
  readonly kind: 'inspection' | 'test-pour';
  readonly scope: 'lot' | 'container';
  readonly containerId?: string;
};
