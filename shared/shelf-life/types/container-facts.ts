import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Life } from '@/shared/calendar/life';
import type { HoldState } from '@/shared/shelf-life/types/lot-facts';

export const CONDITIONS = [
  'gelled',
  'skinned-through',
  'frozen',
  'crystals',
  'haze',
  'settled',
  'darkened',
  'stored-out-of-range',
] as const;
/** What somebody saw when looking into the container, or knows of where it stood. */
export type Condition = (typeof CONDITIONS)[number];

/** What is known of one tin, jug or tube. Opening it does not age its sisters of the same lot. */
export type ContainerFacts = {
  readonly id: string;
  readonly label: string;
  /** Exact count of the stock's small unit (milligrams, microlitres or pieces); never a fraction. */
  readonly left: number;
  readonly opened?: { readonly on: CalendarDate; readonly sureness: 'known' | 'guessed' };
  readonly conditions: readonly Condition[];
  readonly hold: HoldState;
  /** Printed on the container; outranks the policy's opened life. */
  readonly statedOpenedLife?: Life;
};
