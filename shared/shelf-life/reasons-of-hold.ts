import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Reason } from '@/shared/shelf-life/types/reason';

/**
 * The stops for a lot or a container on hold, in quarantine or recalled; both are given when both are. They hold for every
 * purpose, a test pour too: material is released by a recorded decision and only then poured.
 */
export function reasonsOfHold({ lot, container }: Candidate): Reason[] {
  const reasons: Reason[] = [];
  if (lot.hold !== 'free') reasons.push({ code: lot.hold, weight: 'stop', scope: 'lot' });
  if (container.hold !== 'free') reasons.push({ code: container.hold, weight: 'stop', scope: 'container' });
  return reasons;
}
