import type { Pen } from '@/app/_server/ledger/write-entry';
import type { PullContainer } from '@/app/_server/pull/pull-container';
import type { Refusal } from '@/app/_server/refusal';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok, type Result } from '@/shared/result/result';
import { acceptOverride, type OverrideError } from '@/shared/shelf-life/accept-override';
import { testPoursFor } from '@/shared/shelf-life/test-pours-for';
import type { PairedPart } from '@/shared/shelf-life/types/reason';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

const OVERRIDE_CODES: Record<OverrideError['code'], Refusal['code']> = {
  'not-needed': 'changes-nothing',
  never: 'stop-not-overridable',
  'reason-missing': 'override-needs-reason',
  'test-pour-missing': 'override-needs-test-pour',
  'test-pour-failed': 'test-pour-not-passed',
  'test-pour-too-old': 'test-pour-too-old',
  'test-pour-without-photo-or-note': 'override-needs-test-pour',
};

/** The override a pull against a Stop stands on; undefined where the verdict needs none. */
export async function overrideFor(
  pen: Pen,
  line: ContainerLine,
  verdict: Verdict,
  { override }: Pick<PullContainer, 'override'>,
  { today, pairedWith }: { today: CalendarDate; pairedWith: PairedPart | undefined },
): Promise<Result<{ reason: string; inspectionId: number } | undefined, Refusal>> {
  if (verdict.override === 'not-needed') return ok(undefined);
  const pour = override ? await testPourOf(pen.tx, line, override.inspectionId, { today, pairedWith }) : null;
  const offered = { reason: override?.reason ?? '', testPour: pour ?? undefined };
  const accepted = acceptOverride(verdict, offered, { openedOn: line.candidate.container.opened?.on, today });
  if (!accepted.ok) {
    const { error } = accepted;
    const facts: Refusal['facts'] =
      error.code === 'test-pour-too-old' ? { since: error.since.day, because: error.since.because } : {};
    return err({ code: OVERRIDE_CODES[error.code], field: 'override', facts });
  }
  return ok({ reason: accepted.value.reason, inspectionId: override?.inspectionId ?? 0 });
}

/**
 * The named test pour, where it speaks for this container as it is used: its own, its lot's, or that of it together with
 * the other part. A later one that failed takes its word back.
 */
async function testPourOf(
  tx: Pen['tx'],
  line: ContainerLine,
  id: number,
  asked: { today: CalendarDate; pairedWith: PairedPart | undefined },
) {
  const found = testPoursFor(line.candidate, asked).find(({ pour }) => pour.id === String(id));
  if (!found) return null;
  const { note, photoId } = await tx.inspection.findUniqueOrThrow({
    where: { id },
    select: { note: true, photoId: true },
  });
  const { pour, takenBack } = found;
  return {
    madeOn: pour.on,
    passed: pour.passed && !takenBack,
    note,
    photoId: photoId === null ? undefined : String(photoId),
  };
}
