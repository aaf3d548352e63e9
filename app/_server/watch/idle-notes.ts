import { type NotMoving, notMoving } from '@/app/_server/promises/not-moving';
import type { NoteContext, WatchNote } from '@/app/_server/watch/watch-note';
import type { OpenBook } from '@/prisma/open-book';
import { sayDate } from '@/shared/calendar/say-date';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf } from '@/shared/units/stock-unit';

/** What is kept for an open job and nobody touches, a line for each thing, whatever else is written of its job. */
export async function idleNotes(book: OpenBook, context: NoteContext): Promise<WatchNote[]> {
  return (await notMoving(book, context)).map((each) => idleNote(each, context));
}

function idleNote(each: NotMoving, { today, dateOrder: order, units: prefer }: NoteContext): WatchNote {
  const { stockId, label, name, jobId, job, day, amount, unit, since, days, late } = each;
  const say = (date: typeof today) => sayDate(date, { order, today });
  const isContainer = label.startsWith('C');
  const what = isContainer ? `${printQuantity(amountOf(unit, amount), unit, { prefer })} promised` : 'Promised';
  const rested = since === today ? 'since today' : `since ${say(since)}, and nobody touched it`;
  return {
    id: `idle-${stockId}-${jobId}-${since}-${late ? 'late' : 'rests'}`,
    href: `/${isContainer ? 'containers' : 'pieces'}/${label}`,
    name,
    label: printOwnLabel(label as OwnLabelCode),
    place: null,
    word: 'care',
    says: late ? 'its job’s day has passed' : `at rest for ${days} days`,
    why: `${what} to ${job} ${rested}.${late ? ` It was needed on ${say(day)}.` : ''}`,
    toDo: late
      ? 'Take it for the job, give the job another day, or free it on the job’s page.'
      : 'Go on with the job, or free it on the job’s page, so that another job can have it.',
  };
}
