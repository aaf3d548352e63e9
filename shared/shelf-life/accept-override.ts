import { err, ok, type Result } from '@/shared/result/result';
import type { ReasonCode } from '@/shared/shelf-life/types/reason';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

/** What somebody offers to override a Stop: why, and a test pour with its photo or its note. */
export type OfferedOverride = {
  readonly reason: string;
  readonly testPour?: { readonly passed: boolean; readonly photoId?: string; readonly note?: string };
};

export type OverrideError =
  | { readonly code: 'not-needed' }
  | { readonly code: 'never'; readonly because: readonly ReasonCode[] }
  | { readonly code: 'reason-missing' }
  | { readonly code: 'test-pour-missing' }
  | { readonly code: 'test-pour-failed' }
  | { readonly code: 'test-pour-without-photo-or-note' };

/**
 * Whether an offered override stands against the verdict; gives back its reason, trimmed. Fails with the first thing in
 * the way. `acceptOverride(expired, { reason: 'Own table', testPour: { passed: true, note: 'Hard in 24 h' } })` stands.
 */
export function acceptOverride(
  { override }: Verdict,
  { reason, testPour }: OfferedOverride,
): Result<{ readonly reason: string }, OverrideError> {
  if (override === 'not-needed') return err({ code: 'not-needed' });
  if (!override.allowed) return err({ code: 'never', because: override.because });
  if (reason.trim() === '') return err({ code: 'reason-missing' });
  if (!testPour) return err({ code: 'test-pour-missing' });
  if (!testPour.passed) return err({ code: 'test-pour-failed' });
  if (!testPour.photoId?.trim() && !testPour.note?.trim()) return err({ code: 'test-pour-without-photo-or-note' });
  return ok({ reason: reason.trim() });
}
