import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import { closedOn } from '@/shared/timeline/closed-days';
import { curedOn } from '@/shared/timeline/cured-on';
import { type Link, type LinkBecause, linksOf } from '@/shared/timeline/links-of';
import { dayOfStep, inOrder, isAttended, type Step } from '@/shared/timeline/step';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';

/** What is to be minded about a step on its day. */
export type StepCaution =
  | {
      readonly code: 'before-ready';
      readonly because: LinkBecause;
      readonly earliest: CalendarDate;
      readonly after: string;
    }
  | {
      readonly code: 'window-missed';
      readonly because: LinkBecause;
      readonly latest: CalendarDate;
      readonly after: string;
    }
  | { readonly code: 'closed-day'; readonly name: string }
  | { readonly code: 'past-not-done'; readonly days: number }
  | { readonly code: 'after-due'; readonly dueOn: CalendarDate }
  | { readonly code: 'due-before-cured'; readonly dueOn: CalendarDate; readonly curedOn: CalendarDate };

export type StepWord = 'use' | 'care' | 'stop';

export type StepVerdict = {
  readonly stepId: number;
  readonly word: StepWord;
  /** The weightiest first. */
  readonly cautions: readonly StepCaution[];
};

/** Earlier than a sheet lets it is Stop; out of the order of work, or before the full cure, is Care. */
const AGAINST_THE_SHEET: readonly LinkBecause[] = ['again', 'demould', 'recoat', 'finish-cure'];

/** How much a caution weighs. */
export function wordOfCaution(caution: StepCaution): StepWord {
  return caution.code === 'before-ready' && AGAINST_THE_SHEET.includes(caution.because) ? 'stop' : 'care';
}

/**
 * A verdict for each step of a time line, in the order of their days.
 *
 * Stop: poured or coated again, demoulded, worked on or delivered before the sheet lets it. Care: out of the order of work,
 * before the resin's full cure, after the window to pour or coat again (sanded first), on a closed day where somebody has
 * to be there, a day that has passed where somebody had something to do and has not, delivered after the due day, or a due day before the last lift and
 * the last coat are cured (`due-before-cured`, beside the delivery, or where none is planned beside the last step). Use:
 * none of these. A step that is done is not judged, and counts from the day it was done. The first day that keeps a rule is
 * itself allowed. Of several reasons to wait only the longest is said.
 *
 * Example: demould after 72 hours, last lift 1 Dec, flattened 3 Dec: Stop, not before 4 Dec.
 */
export function judgeTimeline(steps: readonly Step[], facts: TimelineFacts): StepVerdict[] {
  const links = linksOf(steps, facts);
  const after = new Map<number, Link[]>();
  for (const link of links) after.set(link.after.id, [...(after.get(link.after.id) ?? []), link]);
  const ordered = inOrder(steps);
  const delivery = ordered.find(({ kind, doneOn }) => kind === 'delivery' && doneOn === null);
  const carriesDue = delivery ?? ordered.filter(({ doneOn }) => doneOn === null).at(-1);
  return ordered.map((step) => {
    if (step.doneOn !== null) return { stepId: step.id, word: 'use', cautions: [] };
    const cautions = [
      ...waits(step, after.get(step.id) ?? []),
      ...ofDay(step, facts),
      ...(step === carriesDue ? ofDue(step, steps, facts) : []),
    ];
    const weight = (caution: StepCaution) => Number(wordOfCaution(caution) === 'stop');
    cautions.sort((a, b) => weight(b) - weight(a));
    return { stepId: step.id, word: cautions[0] ? wordOfCaution(cautions[0]) : 'use', cautions };
  });
}

function waits(step: Step, links: readonly Link[]): StepCaution[] {
  const early = links
    .map((link) => ({ ...link, earliest: addDays(dayOfStep(link.before), link.leastDays) }))
    .filter(({ earliest }) => step.day < earliest);
  // A hard reason and a soft one may both hold: the longest of each.
  const longest = (hard: boolean) =>
    early
      .filter(({ because }) => AGAINST_THE_SHEET.includes(because) === hard)
      .reduce<(typeof early)[number] | undefined>(
        (most, one) => (!most || one.earliest > most.earliest ? one : most),
        undefined,
      );
  const said = [longest(true), longest(false)].flatMap((one) => one ?? []);
  const missed = links.find(
    ({ before, mostDays }) => mostDays !== undefined && step.day > addDays(dayOfStep(before), mostDays),
  );
  return [
    ...said.map(({ because, earliest, before }) => ({
      code: 'before-ready' as const,
      because,
      earliest,
      after: before.name,
    })),
    ...(missed
      ? [
          {
            code: 'window-missed' as const,
            because: missed.because,
            latest: addDays(dayOfStep(missed.before), missed.mostDays ?? 0),
            after: missed.before.name,
          },
        ]
      : []),
  ];
}

function ofDay(step: Step, { today, closed }: TimelineFacts): StepCaution[] {
  const shut = isAttended(step) ? closedOn(step.day, closed) : undefined;
  return [
    ...(step.day < today && isAttended(step)
      ? [{ code: 'past-not-done' as const, days: daysBetween(step.day, today) }]
      : []),
    ...(shut ? [{ code: 'closed-day' as const, name: shut.because === 'range' ? shut.name : '' }] : []),
  ];
}

function ofDue(step: Step, steps: readonly Step[], facts: TimelineFacts): StepCaution[] {
  const { dueOn } = facts;
  if (dueOn === null) return [];
  const cured = curedOn(steps, facts);
  return [
    ...(cured !== undefined && dueOn < cured ? [{ code: 'due-before-cured' as const, dueOn, curedOn: cured }] : []),
    ...(step.kind === 'delivery' && step.day > dueOn ? [{ code: 'after-due' as const, dueOn }] : []),
  ];
}
