import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Step, StepKind } from '@/shared/timeline/step';

/** The columns a step is made of. */
export const stepSelect = {
  id: true,
  kind: true,
  name: true,
  day: true,
  sort: true,
  partId: true,
  pourId: true,
  productId: true,
  coatNr: true,
  doneOn: true,
  doneBy: { select: { reversedBy: { select: { id: true } } } },
} as const;

export type StepRow = Omit<Step, 'kind' | 'day' | 'doneOn'> & {
  kind: string;
  day: string;
  doneOn: string | null;
  doneBy: { reversedBy: { id: number } | null } | null;
};

/** A row as a step. What was done by an entry that was reversed is not done. */
export function stepOfRow({ doneBy, ...row }: StepRow): Step {
  const { id, name, sort, partId, pourId, productId, coatNr } = row;
  return {
    id,
    kind: row.kind as StepKind,
    name,
    day: row.day as CalendarDate,
    sort,
    partId,
    pourId,
    productId,
    coatNr,
    doneOn: (doneBy && !doneBy.reversedBy ? row.doneOn : null) as CalendarDate | null,
  };
}
