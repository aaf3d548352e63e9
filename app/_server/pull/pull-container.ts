import type { Command } from '@/app/_server/act';
import { type Pen, writeEntry } from '@/app/_server/ledger/write-entry';
import type { Ask } from '@/app/_server/pull/ask';
import { judgeAsk } from '@/app/_server/pull/judge-ask';
import type { Refusal } from '@/app/_server/refusal';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { loadContainer } from '@/app/_server/stock/load-container';
import { dateIn } from '@/shared/calendar/date-in';
import { writeOpened } from '@/shared/ledger/opened';
import { err, ok, type Result } from '@/shared/result/result';
import { acceptOverride, type OverrideError } from '@/shared/shelf-life/accept-override';
import type { Purpose, Verdict, VerdictWord } from '@/shared/shelf-life/types/verdict';

/** Takes an amount out of a container for a job, on the verdict the asker has seen. */
export type PullContainer = Ask & {
  asked: number;
  /** The word on the asker's screen; a worse one now is shown before anything is written. */
  seen: VerdictWord;
  override?: { reason: string; inspectionId: number };
};

export type Pulled = {
  /** The entry it was written as: what undoing it reverses. */
  entryId: number;
  label: string;
  left: number;
  word: VerdictWord;
  overridden: boolean;
  /** It was sealed until now. */
  opened: boolean;
};

const WORSE: Record<VerdictWord, number> = { use: 0, care: 1, stop: 2 };

/**
 * Writes a pull: the verdict judged again on the book as it stands, the amount, the opening of a sealed container, and
 * an override with the test pour it rests on. All or nothing.
 */
export const pullContainer: Command<PullContainer, Pulled> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'pulled', request: input }, async (pen) => {
    const today = dateIn(pen.book.timeZone, pen.now);
    const line = await loadContainer(pen.tx, input.label);
    if (!line) return err({ code: 'not-found', facts: { label: input.label } });
    const job = await jobOf(pen, input);
    if (!job.ok) return job;
    if (!Number.isSafeInteger(input.asked) || input.asked <= 0)
      return err({ code: 'not-an-exact-amount', field: 'asked' });
    if (line.left === 0) return err({ code: 'already-empty', facts: { label: line.label } });
    if (input.asked > line.left) {
      return err({
        code: 'not-enough-left',
        field: 'asked',
        facts: { label: line.label, left: line.left, asked: input.asked, unit: line.unit },
      });
    }
    const verdict = await judgeAsk(pen.tx, line, { ...input, purpose: job.value.purpose }, today);
    if (WORSE[verdict.word] > WORSE[input.seen])
      return err({ code: 'verdict-changed', facts: { label: line.label, word: verdict.word } });
    const overridden = await overrideFor(pen, line, verdict, input);
    if (!overridden.ok) return overridden;
    const answer: Pulled = {
      entryId: pen.entryId,
      label: line.label,
      left: line.left - input.asked,
      word: verdict.word,
      overridden: overridden.value !== undefined,
      opened: line.candidate.container.opened === undefined,
    };
    await pen.enter(
      {
        jobId: input.jobId,
        productId: line.productId,
        why: overridden.value?.reason ?? '',
        verdict: verdict.word,
        verdictJson: JSON.stringify({
          purpose: job.value.purpose,
          asked: input.asked,
          verdict: { ...verdict, instead: undefined },
        }),
        overrideInspectionId: overridden.value?.inspectionId,
      },
      answer,
    );
    const moved = await pen.move(line.stockId, {
      quantityDelta: -input.asked,
      opened: line.candidate.container.opened ? undefined : writeOpened({ on: today, sureness: 'known' }),
    });
    return moved.ok ? ok(answer) : moved;
  });

async function jobOf(pen: Pen, input: PullContainer): Promise<Result<{ purpose: Purpose }, Refusal>> {
  if (input.jobId === undefined) return ok({ purpose: input.purpose });
  const job = await pen.tx.job.findUnique({ where: { id: input.jobId }, select: { purpose: true } });
  return job ? ok({ purpose: job.purpose as Purpose }) : err({ code: 'not-found', field: 'jobId' });
}

const OVERRIDE_CODES: Record<OverrideError['code'], Refusal['code']> = {
  'not-needed': 'changes-nothing',
  never: 'stop-not-overridable',
  'reason-missing': 'override-needs-reason',
  'test-pour-missing': 'override-needs-test-pour',
  'test-pour-failed': 'test-pour-not-passed',
  'test-pour-without-photo-or-note': 'override-needs-test-pour',
};

async function overrideFor(
  pen: Pen,
  line: ContainerLine,
  verdict: Verdict,
  { override }: PullContainer,
): Promise<Result<{ reason: string; inspectionId: number } | undefined, Refusal>> {
  if (verdict.override === 'not-needed') return ok(undefined);
  const pour = override ? await testPourOf(pen.tx, line, override.inspectionId) : null;
  const accepted = acceptOverride(verdict, { reason: override?.reason ?? '', testPour: pour ?? undefined });
  if (!accepted.ok) return err({ code: OVERRIDE_CODES[accepted.error.code], field: 'override' });
  return ok({ reason: accepted.value.reason, inspectionId: override?.inspectionId ?? 0 });
}

/** The named test pour, where it speaks for this container. A later one that failed takes its word back. */
async function testPourOf(tx: Pen['tx'], line: ContainerLine, id: number) {
  const speaks = { kind: 'test-pour', lotId: line.lotId, OR: [{ containerId: null }, { containerId: line.stockId }] };
  const pour = await tx.inspection.findFirst({
    where: { ...speaks, id },
    select: { passed: true, note: true, photoId: true },
  });
  if (!pour) return null;
  const failedSince = await tx.inspection.findFirst({
    where: { ...speaks, passed: false, id: { gt: id } },
    select: { id: true },
  });
  return {
    passed: pour.passed && !failedSince,
    note: pour.note,
    photoId: pour.photoId === null ? undefined : String(pour.photoId),
  };
}
