import { addLife } from '@/shared/calendar/add-life';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { sayLife } from '@/shared/calendar/say-life';
import { inspectionLife } from '@/shared/shelf-life/inspection-life';
import type { Policy } from '@/shared/shelf-life/types/policy';

/** The day an inspection passed today may hold until, where an inspection extends the material and its life is known. */
export function suggestInspection(
  policy: Policy,
  today: CalendarDate,
): { until: CalendarDate; says: string } | undefined {
  if (policy.kind !== 'inspectable' || !policy.statedLife) return undefined;
  const life = inspectionLife(policy.statedLife);
  return {
    until: addLife(today, life),
    says: `${sayLife(life)} is suggested, half of the ${sayLife(policy.statedLife)} it keeps sealed. Give less where you doubt it.`,
  };
}
