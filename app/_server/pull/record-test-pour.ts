import type { Command } from '@/app/_server/act';
import { loadContainer } from '@/app/_server/stock/load-container';
import { recordInspection } from '@/app/_server/stock/record-inspection';
import { withPhoto } from '@/app/_server/stock/with-photo';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err } from '@/shared/result/result';

/** A small pour out of one container, with how it came out. */
export type RecordTestPour = {
  label: string;
  madeOn: CalendarDate;
  passed: boolean;
  method: string;
  note: string;
  photo?: File;
};

/** Records a test pour of one container, its picture checked and kept. It speaks for this container alone. */
export const recordTestPour: Command<RecordTestPour, { lotId: number; madeOn: CalendarDate; passed: boolean }> = async (
  book,
  by,
  { label, photo, ...pour },
) => {
  const line = await loadContainer(book.read, label);
  if (!line) return err({ code: 'not-found', facts: { label } });
  return withPhoto(photo, 'Test pour', (kept) =>
    recordInspection(book, by, {
      ...pour,
      lotId: line.lotId,
      containerLabel: line.label,
      kind: 'test-pour',
      photo: kept,
    }),
  );
};
