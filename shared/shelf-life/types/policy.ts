import type { Life } from '@/shared/calendar/life';

/** Where a life comes from. A house default is the workshop's own caution and never outranks a container's label. */
export type Basis = 'label' | 'data-sheet' | 'house-default';

/** `fixed`: nothing extends it. `inspectable`: a passed inspection extends it. `keeps`: no limit is stated. */
export const POLICY_KINDS = ['fixed', 'inspectable', 'keeps'] as const;
export type PolicyKind = (typeof POLICY_KINDS)[number];

/** The two-part system a material belongs to, and which part it is. */
export type MaterialSystem = { readonly id: string; readonly name: string; readonly part: 'A' | 'B' };

/** How a material keeps: the product's facts, shared by all its lots. */
export type Policy = {
  readonly kind: PolicyKind;
  /** Unopened, counted from the day it was made. */
  readonly statedLife?: Life;
  readonly statedLifeBasis: Basis;
  /** Counted from the day the container was opened. */
  readonly openedLife?: Life;
  readonly openedLifeBasis: Basis;
  /** A limit this many days after the day of use, or fewer, asks for care; 0 asks only on the last good day itself. */
  readonly careWindowDays: number;
  readonly freezingRuins: boolean;
  readonly storage?: { readonly leastC: number; readonly mostC: number };
  /** Whether a change of lot can be seen in the finished piece. */
  readonly colourShows: boolean;
  readonly system?: MaterialSystem;
};
