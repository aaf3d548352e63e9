import type { Reason } from '@/shared/shelf-life/types/reason';

/** Where a date that was read but not confirmed is confirmed: on the lot's page. Undefined where none waits for it. */
export function confirmDatesHref(reasons: readonly Reason[], lotId: number): string | undefined {
  return reasons.some((reason) => reason.code === 'date-unconfirmed') ? `/lots/${lotId}#dates` : undefined;
}
