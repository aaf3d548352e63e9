import type { Pulled } from '@/app/_server/pull/pull-container';
import type { PullDraft } from '@/app/(shop)/pull/_ui/pull-draft';
import type { PullGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import type { PullAnswered } from '@/app/(shop)/pull/answer/route';

/** Longer than this on a workshop's network is no answer. */
const PATIENCE_MS = 12_000;

/** Asks the book about what was scanned; `unreached` when no answer came. */
export async function askPull(draft: PullDraft, goal: PullGoal): Promise<PullAnswered | 'unreached'> {
  const query = new URLSearchParams({
    code: draft.code?.text ?? '',
    purpose: goal.purpose,
    dayOfUse: draft.day ?? goal.day,
  });
  if (draft.code?.symbology) query.set('symbology', draft.code.symbology);
  if (goal.jobId !== undefined) query.set('jobId', String(goal.jobId));
  if (draft.asked !== undefined) query.set('asked', String(draft.asked));
  if (draft.pairedLabel) query.set('pairedLabel', draft.pairedLabel);
  try {
    const response = await fetch(`/pull/answer?${query}`, { signal: AbortSignal.timeout(PATIENCE_MS) });
    return (await response.json()) as PullAnswered;
  } catch {
    return 'unreached';
  }
}

/** What the press with this key wrote; null when it wrote nothing, `unreached` when that cannot be known now. */
export async function askWritten(key: string): Promise<Pulled | null | 'unreached'> {
  try {
    const response = await fetch(`/pull/written?${new URLSearchParams({ key })}`, {
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    if (!response.ok) return 'unreached';
    return ((await response.json()) as { answer: Pulled | null }).answer;
  } catch {
    return 'unreached';
  }
}
