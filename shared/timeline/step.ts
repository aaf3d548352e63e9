import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** What a step of a job can be, in the order in which they usually come. */
export const STEP_KINDS = [
  'wood-dry',
  'seal',
  'lift',
  'demould',
  'flatten',
  'assembly',
  'coat',
  'cure',
  'delivery',
  'other',
] as const;
export type StepKind = (typeof STEP_KINDS)[number];

/** One step of a job's time line. */
export type Step = {
  readonly id: number;
  readonly kind: StepKind;
  readonly name: string;
  readonly day: CalendarDate;
  /** Order among steps of one day. */
  readonly sort: number;
  /** The part of the job it belongs to; null where it is the whole job's, which waits for all and is waited for by all. */
  readonly partId: number | null;
  /** The pour it belongs to. */
  readonly pourId: number | null;
  /** A coat: of what, and the how-many-eth. */
  readonly productId: number | null;
  readonly coatNr: number | null;
  readonly doneOn: CalendarDate | null;
};

/** Nobody has to be there for these: wood dries and resin cures on a Sunday too. */
const UNATTENDED: readonly StepKind[] = ['wood-dry', 'cure'];

/** Whether somebody works on the day of such a step. */
export const isAttended = ({ kind }: Pick<Step, 'kind'>): boolean => !UNATTENDED.includes(kind);

/** The day a step was done, or is planned for. */
export const dayOfStep = ({ doneOn, day }: Pick<Step, 'doneOn' | 'day'>): CalendarDate => doneOn ?? day;

/** Steps in the order of their days; of one day by `sort`, then by the usual order of work, then by number. */
export function inOrder(steps: readonly Step[]): Step[] {
  const rank = ({ kind }: Step) => STEP_KINDS.indexOf(kind);
  const compare = (a: Step, b: Step) =>
    (dayOfStep(a) < dayOfStep(b) ? -1 : dayOfStep(a) > dayOfStep(b) ? 1 : 0) ||
    a.sort - b.sort ||
    rank(a) - rank(b) ||
    a.id - b.id;
  return [...steps].sort(compare);
}
