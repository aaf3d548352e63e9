import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok, type Result } from '@/shared/result/result';
import { type PourSince, testPourSince } from '@/shared/shelf-life/test-pour-since';
import type { ReasonCode } from '@/shared/shelf-life/types/reason';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

/** What somebody offers to override a Stop: why, and a test pour with its photo or its note. */
export type OfferedOverride = {
  readonly reason: string;
  readonly testPour?: {
    readonly madeOn: CalendarDate;
    readonly passed: boolean;
    readonly photoId?: string;
    readonly note?: string;
  };
};

export type OverrideError =
  | { readonly code: 'not-needed' }
  | { readonly code: 'never'; readonly because: readonly ReasonCode[] }
  | { readonly code: 'reason-missing' }
  | { readonly code: 'test-pour-missing' }
  | { readonly code: 'test-pour-failed' }
  | { readonly code: 'test-pour-too-old'; readonly since: PourSince }
  | { readonly code: 'test-pour-without-photo-or-note' };

/**
 * Whether an offered override stands against the verdict; gives back its reason, trimmed. Fails with the first thing in
 * the way. The pour must speak of the material as it is: made on the day of `testPourSince` or later, else
 * `test-pour-too-old`. `openedOn` is the container's, `today` the workshop's.
 *
 * Best before 12 Nov, on 25 Nov: a pour of 13 Nov that passed, with its note, and a reason stand; one of 12 Nov does not.
 */
export function acceptOverride(
  verdict: Pick<Verdict, 'override' | 'reasons'>,
  { reason, testPour }: OfferedOverride,
  facts: { readonly openedOn?: CalendarDate; readonly today: CalendarDate },
): Result<{ readonly reason: string }, OverrideError> {
  const { override } = verdict;
  if (override === 'not-needed') return err({ code: 'not-needed' });
  if (!override.allowed) return err({ code: 'never', because: override.because });
  if (reason.trim() === '') return err({ code: 'reason-missing' });
  if (!testPour) return err({ code: 'test-pour-missing' });
  if (!testPour.passed) return err({ code: 'test-pour-failed' });
  const since = testPourSince(verdict, facts);
  if (testPour.madeOn < since.day) return err({ code: 'test-pour-too-old', since });
  if (!testPour.photoId?.trim() && !testPour.note?.trim()) return err({ code: 'test-pour-without-photo-or-note' });
  return ok({ reason: reason.trim() });
}
