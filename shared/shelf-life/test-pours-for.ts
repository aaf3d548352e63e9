import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { heardInspections } from '@/shared/shelf-life/heard-inspections';
import { standingInspections } from '@/shared/shelf-life/standing-inspections';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Inspection } from '@/shared/shelf-life/types/inspection';
import type { PairedPart } from '@/shared/shelf-life/types/reason';

/** A test pour that speaks for a container. `takenBack` where it passed and was found bad since. */
export type TestPourFor = { readonly pour: Inspection; readonly takenBack: boolean };

/**
 * The test pours that speak for a container as it is to be used, the latest last: its own, those of its lot, and those of
 * the very pair where it is mixed with `pairedWith`. One together with any other lot is none of them. The latest is what
 * an override of a Stop for a date may rest on, if it passed and was not taken back.
 *
 * Mixed with B, and poured together with B on 20 Nov: that one; mixed with nothing or with C: none.
 */
export function testPoursFor(
  candidate: Pick<Candidate, 'container' | 'inspections'>,
  { today, pairedWith }: { readonly today: CalendarDate; readonly pairedWith?: Pick<PairedPart, 'trials'> },
): readonly TestPourFor[] {
  const heard = heardInspections(candidate, today);
  const ofPair = new Set(pairedWith?.trials?.map(({ id }) => id));
  const pours = heard.filter(({ kind, together }) => kind === 'test-pour' && (!together || ofPair.has(together.trial)));
  const { failed, failedTogether } = standingInspections(candidate, today, pairedWith);
  const bad = heard.filter((one) => one === failed || one === failedTogether || (!one.passed && pours.includes(one)));
  return pours.map((pour) => ({
    pour,
    takenBack: pour.passed && bad.some((one) => heard.indexOf(one) > heard.indexOf(pour)),
  }));
}
