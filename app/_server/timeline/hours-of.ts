import { pouredAt } from '@/app/_server/pours/poured-at';
import type { WriteTransaction } from '@/prisma/open-book';
import { minuteIn } from '@/shared/calendar/minute-in';
import type { HoursOfDay } from '@/shared/timeline/timeline-facts';

/** The hour it is, and those at which the lifts of a job were poured, as far as they were written down on their day. */
export async function hoursOf(
  tx: Pick<WriteTransaction, 'lift'>,
  jobId: number,
  { now, timeZone }: { now: Date; timeZone: string },
): Promise<HoursOfDay> {
  const lifts = await tx.lift.findMany({
    where: { pour: { jobId }, stepId: { not: null }, pouredBy: { reversedBy: null } },
    select: { stepId: true, pouredBy: { select: { happenedAt: true, writtenAt: true } } },
  });
  const known = lifts.flatMap(({ stepId, pouredBy }): [number, number][] => {
    if (stepId === null || !pouredBy) return [];
    const { at, isExact } = pouredAt({ ...pouredBy, weighed: [] });
    return isExact ? [[stepId, minuteIn(timeZone, new Date(at))]] : [];
  });
  return { now: minuteIn(timeZone, now), pouredAt: Object.fromEntries(known) };
}
