import { type CalendarDate, parseCalendarDate } from '@/shared/calendar/calendar-date';
import type { Precision } from '@/shared/calendar/precision';
import { unwrap } from '@/shared/result/result';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { ContainerFacts } from '@/shared/shelf-life/types/container-facts';
import type { Inspection } from '@/shared/shelf-life/types/inspection';
import type { LabelDate } from '@/shared/shelf-life/types/label-date';
import type { LotFacts } from '@/shared/shelf-life/types/lot-facts';
import type { Policy } from '@/shared/shelf-life/types/policy';
import type { ReasonCode } from '@/shared/shelf-life/types/reason';
import type { JudgeInput, Verdict } from '@/shared/shelf-life/types/verdict';

export const day = (text: string): CalendarDate => unwrap(parseCalendarDate(text));

export const TODAY = day('2026-11-25');
export const USE_DAY = day('2026-12-19');

export const printed = (text: string, precision: Precision = 'day', confirmed = true): LabelDate => ({
  date: day(text),
  precision,
  confirmed,
});

export const policy = (change: Partial<Policy> = {}): Policy => ({
  kind: 'inspectable',
  statedLifeBasis: 'house-default',
  openedLifeBasis: 'house-default',
  careWindowDays: 30,
  freezingRuins: false,
  colourShows: false,
  ...change,
});

export const lot = (change: Partial<LotFacts> = {}): LotFacts => ({ id: 'lot-1', code: 'L1', hold: 'free', ...change });

export const container = (change: Partial<ContainerFacts> = {}): ContainerFacts => ({
  id: 'tin-1',
  label: 'T-01',
  left: 1000,
  conditions: [],
  hold: 'free',
  ...change,
});

export const inspection = (change: Partial<Inspection> = {}): Inspection => ({
  id: 'look-1',
  on: day('2026-11-01'),
  passed: true,
  validUntil: day('2027-05-01'),
  kind: 'inspection',
  scope: 'lot',
  ...change,
});

type Facts = {
  readonly policy?: Partial<Policy>;
  readonly lot?: Partial<LotFacts>;
  readonly container?: Partial<ContainerFacts>;
  readonly inspections?: readonly Inspection[];
};

/** A container with a confirmed best-before far off, unless told otherwise: judged Use. */
export const candidate = (facts: Facts = {}): Candidate => ({
  policy: policy(facts.policy),
  lot: lot({ bestBefore: printed('2027-12-31'), ...facts.lot }),
  container: container(facts.container),
  inspections: facts.inspections ?? [],
});

type Job = Partial<Pick<JudgeInput, 'purpose' | 'asked' | 'dayOfUse' | 'today' | 'pairedWith' | 'others'>>;

export const input = (facts: Facts = {}, job: Job = {}): JudgeInput => ({
  ...candidate(facts),
  purpose: 'client',
  dayOfUse: USE_DAY,
  today: TODAY,
  ...job,
});

export const codes = (verdict: Verdict): ReasonCode[] => verdict.reasons.map((reason) => reason.code);
