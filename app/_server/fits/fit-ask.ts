import type { AskedBeside } from '@/app/_server/fits/conditions-of-piece';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { FitRequest } from '@/shared/fit/fit-request';
import type { RiverRequest } from '@/shared/fit/fit-river';

/** A top, how it is to be made up, and which wood may be looked at for it. */
export type FitAsk = AskedBeside & {
  readonly request: FitRequest;
  /** In one piece, of two sisters opened like a book, or of two pieces either side of a river of resin. */
  readonly make:
    | { readonly of: 'one' }
    | { readonly of: 'pair' }
    | { readonly of: 'river'; readonly river: RiverRequest };
  /** As the book writes it; any where it is left out. */
  readonly species?: string | undefined;
  /** Leaves out what is promised to a job or held. */
  readonly freeOnly: boolean;
  /** The day it has to be dry, to the moisture asked for. */
  readonly dryBy?: CalendarDate | undefined;
  /** The most the finished top may weigh, grams. */
  readonly mostGrams?: number | undefined;
};
