import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Limit } from '@/shared/shelf-life/types/limit';
import type { PairedPart, Reason, ReasonCode } from '@/shared/shelf-life/types/reason';
import type { Suggestion } from '@/shared/shelf-life/types/suggestion';

/** `client` for a commissioned piece, `own` for the maker's own, `test` for a test pour or sample. */
export const PURPOSES = ['client', 'own', 'test'] as const;
export type Purpose = (typeof PURPOSES)[number];

export type JudgeInput = Candidate & {
  readonly purpose: Purpose;
  /** How much the job wants, in the stock's small unit. */
  readonly asked?: number;
  /** The day that counts: the last lift of the pour, the last coat. */
  readonly dayOfUse: CalendarDate;
  readonly today: CalendarDate;
  /** Given only when this container is to be mixed with that one as parts A and B; test pours of the two then count. */
  readonly pairedWith?: PairedPart;
  /** Other containers of the same material, from which to suggest. */
  readonly others?: readonly Candidate[];
};

export type VerdictWord = 'use' | 'care' | 'stop';

export type Override =
  | 'not-needed'
  | { readonly allowed: true; readonly needs: readonly ['reason', 'test-pour'] }
  | { readonly allowed: false; readonly because: readonly ReasonCode[] };

export type Verdict = {
  readonly word: VerdictWord;
  readonly dayOfUse: CalendarDate;
  /** The day the limits were compared with: the day of use, or today where that day has passed. */
  readonly judgedFor: CalendarDate;
  /** Every limit that is known, in the order of `LIMIT_BASES`, effective or set aside. */
  readonly limits: readonly Limit[];
  /** The earliest effective limit. */
  readonly governing?: Limit;
  /** From the day judged for to the governing limit's last good day; 0 on that day, negative when past. */
  readonly daysLeft?: number;
  /** Every reason, worst first. */
  readonly reasons: readonly Reason[];
  readonly override: Override;
  readonly instead?: Suggestion;
};
