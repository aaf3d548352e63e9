import { readClosedDays } from '@/app/_server/timeline/read-closed-days';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { FinishSheet } from '@/shared/finish/finish-sheet';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import type { Step } from '@/shared/timeline/step';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';

type Reader = Pick<WriteTransaction, 'book' | 'closedDay' | 'pour' | 'sheet'>;

/** What the steps of a job are judged by: closed days, and the newest sheets of its resins and finishes. */
export async function timelineFactsOf(
  tx: Reader,
  steps: readonly Step[],
  { today, dueOn }: { today: CalendarDate; dueOn: CalendarDate | null },
): Promise<TimelineFacts> {
  const pourIds = [...new Set(steps.flatMap(({ pourId }) => pourId ?? []))];
  const productIds = [...new Set(steps.flatMap(({ productId }) => productId ?? []))];
  const pours = await tx.pour.findMany({ where: { id: { in: pourIds } }, select: { id: true, systemId: true } });
  const sheets = await tx.sheet.findMany({
    where: {
      entry: { reversedBy: null },
      OR: [{ systemId: { in: pours.map(({ systemId }) => systemId) } }, { productId: { in: productIds } }],
    },
    orderBy: { id: 'asc' },
    select: { systemId: true, productId: true, facts: true },
  });
  // The newest counts: a later one writes over it.
  const ofSystem = new Map<number, ResinSheet>();
  const finishes: Record<number, FinishSheet> = {};
  for (const { systemId, productId, facts } of sheets) {
    if (systemId !== null) ofSystem.set(systemId, JSON.parse(facts) as ResinSheet);
    if (productId !== null) finishes[productId] = JSON.parse(facts) as FinishSheet;
  }
  return {
    today,
    dueOn,
    closed: await readClosedDays(tx),
    pours: Object.fromEntries(
      pours.flatMap(({ id, systemId }) => {
        const sheet = ofSystem.get(systemId);
        if (!sheet) return [];
        const { againFromHours, againToHours, demouldHours, fullCureDays } = sheet;
        return [[id, { againFromHours, againToHours, demouldHours, fullCureDays }]];
      }),
    ),
    finishes,
  };
}
