import type { PullReply } from '@/app/_server/pull/scan-to-pull';
import { recall, remember } from '@/app/_ui/scanner/device-memory';
import type { PullGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

type PullStep = 'answer' | 'amount' | 'pour' | 'reason' | 'mixed';

/** A pull that is not finished: everything somebody scanned, chose or typed for it. It outlives a reload and a dead phone. */
export type PullDraft = {
  readonly code?: { readonly text: string; readonly symbology?: string };
  readonly step: PullStep;
  /** The day of use of this pull, where it is not the job's. */
  readonly day?: CalendarDate;
  readonly amountText: string;
  readonly weighing: boolean;
  readonly beforeText: string;
  readonly afterText: string;
  /** The day it was taken, as typed; absent while that is today. */
  readonly takenText?: string;
  /** The amount the last answer was asked for, in the small unit. */
  readonly asked?: number;
  readonly pairedLabel?: string;
  readonly overriding: boolean;
  readonly reasonText: string;
  readonly pour: {
    readonly dayText: string;
    readonly method: string;
    readonly passed?: boolean;
    readonly note: string;
  };
  /** The last answer, kept to be shown as not fresh while the book cannot be reached. */
  readonly reply?: PullReply;
  /** The question it answered, as `questionOf` writes it. */
  readonly replyTo?: string;
  /** When it was given, milliseconds. */
  readonly repliedAt?: number;
  /** What the pressed key was to take: kept until its answer comes. */
  readonly pressed?: number;
};

export const EMPTY_DRAFT: PullDraft = {
  step: 'answer',
  amountText: '',
  weighing: false,
  beforeText: '',
  afterText: '',
  overriding: false,
  reasonText: '',
  pour: { dayText: '', method: '', note: '' },
};

/** What a draft asks, apart from the amount: an answer to any other question must never be shown for it. */
export function questionOf({ code, day, pairedLabel }: PullDraft, goal: PullGoal): string {
  return JSON.stringify([code?.text, code?.symbology, goal.jobId, goal.purpose, day ?? goal.day, pairedLabel]);
}

const NAME = 'pull-draft';
/** Raise it when the shape above, or of an answer, changes: what an older version kept is then let go. */
const VERSION = 3;

export function recallDraft(): PullDraft {
  try {
    const kept: unknown = JSON.parse(recall(NAME) ?? 'null');
    if (typeof kept !== 'object' || kept === null || !('version' in kept) || kept.version !== VERSION)
      return EMPTY_DRAFT;
    return 'draft' in kept ? { ...EMPTY_DRAFT, ...(kept.draft as PullDraft) } : EMPTY_DRAFT;
  } catch {
    return EMPTY_DRAFT;
  }
}

export function rememberDraft(draft: PullDraft): void {
  remember(NAME, draft.code || draft.day ? JSON.stringify({ version: VERSION, draft }) : undefined);
}
