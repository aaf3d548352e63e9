import type { WriteTransaction } from '@/prisma/open-book';
import { dateIn } from '@/shared/calendar/date-in';
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
    select: { stepId: true, pouredOn: true, pouredBy: { select: { writtenAt: true } } },
  });
  const pouredAt = lifts.flatMap(({ stepId, pouredOn, pouredBy }): [number, number][] =>
    stepId !== null && pouredBy && dateIn(timeZone, pouredBy.writtenAt) === pouredOn
      ? [[stepId, minuteIn(timeZone, pouredBy.writtenAt)]]
      : [],
  );
  return { now: minuteIn(timeZone, now), pouredAt: Object.fromEntries(pouredAt) };
}
