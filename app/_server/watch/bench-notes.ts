import { sayStep } from '@/app/_server/watch/say-step';
import { type UndoneStep, undoneSteps } from '@/app/_server/watch/undone-steps';
import type { NoteContext, WatchNote } from '@/app/_server/watch/watch-note';
import type { OpenBook } from '@/prisma/open-book';
import { addDays } from '@/shared/calendar/add-days';
import { daysBetween } from '@/shared/calendar/days-between';
import { sayDate } from '@/shared/calendar/say-date';
import { sayDays } from '@/shared/calendar/say-days';
import type { StepKind } from '@/shared/timeline/step';

/** A step this many days away is shown, so that what it needs can be got ready. */
const AHEAD_DAYS = 2;

/** The steps of all jobs that are late, or due today or in the next two days: lifts, demoulding, coats, deliveries. */
export async function benchNotes(book: OpenBook, context: NoteContext): Promise<WatchNote[]> {
  const steps = await undoneSteps(book, addDays(context.today, AHEAD_DAYS));
  // A pour that waits for a lift is neither to be demoulded nor cured: the lift's own line says so.
  return steps
    .filter((step) => !(step.liftsLeft && ['demould', 'cure'].includes(step.kind)))
    .map((step) => benchNote(step, context));
}

function benchNote(step: UndoneStep, { today, dateOrder: order }: NoteContext): WatchNote {
  const days = daysBetween(step.day, today);
  const on = sayDate(step.day, { order, today });
  const common = {
    href: `/jobs/${step.jobId}`,
    name: sayStep(step),
    label: step.job,
    place: null,
    id: step.matter,
  };
  if (step.kind === 'demould' && days >= 0) {
    return {
      ...common,
      word: 'use',
      says: 'may be demoulded',
      why: days === 0 ? 'Its demould day is today.' : `Its demould day was ${on}.`,
      toDo: 'Look at a corner first: where it still gives, it is not ready. The data sheet has the last word.',
    };
  }
  if (days > 0) {
    return {
      ...common,
      word: 'stop',
      says: `${days} ${days === 1 ? 'day' : 'days'} late`,
      why: `It was due ${on} and nobody said it is done. Whatever waits for it hangs on it.`,
      toDo: 'Say it is done on the job’s page, or move its day.',
    };
  }
  return {
    ...common,
    word: 'care',
    says: days === 0 ? 'due today' : days === -1 ? 'due tomorrow' : `due in ${sayDays(-days)}`,
    why: `Due ${on}.${step.note ? ` ${step.note}` : ''}`,
    toDo: TO_DO[step.kind],
  };
}

const TO_DO: Readonly<Partial<Record<StepKind, string>>> = {
  seal: 'Bring the resin to the temperature of its sheet, and have gloves and air ready.',
  lift: 'Bring both parts to the temperature of their sheet, level the form, and have gloves and air ready.',
  coat: 'Have the finish, the pads and a place for the rags ready.',
};
