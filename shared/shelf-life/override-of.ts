import type { Reason, ReasonCode } from '@/shared/shelf-life/types/reason';
import type { Override } from '@/shared/shelf-life/types/verdict';

/** The stops that are about a date or the lack of one. */
const ABOUT_DATES: readonly ReasonCode[] = ['past-limit', 'date-unknown', 'inspection-failed'];

/**
 * Whether a Stop may be overridden. One about a date, or about no date being known, may, by a written reason and a passed
 * test pour. A hold, quarantine or recall may not: it is first released by a recorded decision. Spoilt, wrong system, a
 * pair that failed together and empty never. One stop that may not be overridden is enough to refuse, and every such code is given, once.
 */
export function overrideOf(reasons: readonly Reason[]): Override {
  const stops = reasons.filter((reason) => reason.weight === 'stop').map((reason) => reason.code);
  if (stops.length === 0) return 'not-needed';
  const because = [...new Set(stops.filter((code) => !ABOUT_DATES.includes(code)))];
  return because.length > 0 ? { allowed: false, because } : { allowed: true, needs: ['reason', 'test-pour'] };
}
