import { describe, expect, it } from 'vitest';
import type { JobLine } from '@/app/_server/jobs/read-jobs';
import type { NeedFacts } from '@/app/_server/needs/standing-needs';
import { sayJobNow } from '@/app/_server/words/say-job-now';
import { partNeeds } from '@/app/(shop)/jobs/[id]/part-needs';
import { sayDueTooEarly } from '@/app/(shop)/jobs/say-due';
import { caughtUp, typedJob } from '@/app/(shop)/jobs/typed-job';
import { day } from '@/tests/support/day';

const JOB: JobLine = {
  id: 1,
  name: 'Desk',
  purpose: 'client',
  client: 'Marlow',
  dayOfUse: day('2026-12-12'),
  state: 'open',
  note: '',
  stage: 'agreed',
  dueOn: null,
  contact: '',
};

describe('a form of a job that was changed meanwhile', () => {
  it('keeps what was typed, and takes over what was not touched', () => {
    const opened = typedJob(JOB, 'day-first');
    const now = typedJob({ ...JOB, client: 'Hale', note: 'Oak', dueOn: day('2027-01-15') }, 'day-first');
    const typed = { ...opened, note: 'Ash', name: 'Writing desk' };
    expect(caughtUp(typed, opened, now)).toEqual({
      name: 'Writing desk',
      purpose: 'client',
      client: 'Hale',
      contact: '',
      dayOfUse: '12 Dec 2026',
      dueOn: '15 Jan 2027',
      note: 'Ash',
    });
    expect(caughtUp(opened, opened, now)).toEqual(now);
  });

  it('says each field as it is now', () => {
    const date = (value: unknown) => `the ${value}`;
    expect(sayJobNow({ job: 'Desk', who: 'Ada', name: 'Bench', purpose: 'own', client: '', dueOn: '' }, date)).toBe(
      'its name is now “Bench”; it is now your own; the client is now empty; the due day is now none',
    );
    expect(sayJobNow({ dueOn: '2027-01-15', dayOfUse: '2026-12-01' }, date)).toBe(
      'the day of use is now the 2026-12-01; the due day is now the 2027-01-15',
    );
  });
});

describe('a due day as it is typed', () => {
  const say = (due: string, ready: Parameters<typeof sayDueTooEarly>[1]) =>
    sayDueTooEarly(day(due), ready, { today: day('2026-11-25'), order: 'day-first' });
  const ready = { cured: day('2026-12-19'), dry: day('2026-12-03'), work: day('2026-12-13') };
  it('is warned of before the cure ends, the wood is dry or the work is done, the longest wait first', () => {
    expect(say('2026-12-02', ready)).toEqual([
      'The due day is 17 days too early: everything is cured only on 19 Dec.',
      'The due day is 11 days too early: the last work on it is on 13 Dec.',
      'The due day is 1 day too early: the wood is likely dry only on 3 Dec.',
    ]);
  });
  it('is not on the day itself, nor where nothing is known', () => {
    expect(say('2026-12-19', ready)).toEqual([]);
    expect(say('2026-12-18', ready)).toHaveLength(1);
    expect(say('2026-12-18', {})).toEqual([]);
  });
});

describe('what a part takes', () => {
  const need = (change: Partial<NeedFacts>): NeedFacts => ({
    id: 1,
    jobId: 1,
    job: 'Desk',
    purpose: 'client',
    firm: true,
    kind: 'material',
    on: day('2026-12-12'),
    goodTo: day('2026-12-12'),
    step: null,
    stepId: null,
    stepDone: false,
    liftId: null,
    liftPoured: false,
    part: 'Top',
    partId: 7,
    surface: '',
    note: '',
    unit: 'uL',
    amount: 200_000,
    product: { id: 3, name: 'Hardwax oil' },
    system: null,
    wood: null,
    ...change,
  });
  it('is said once a thing, with its coats and lifts together, and not what is for the whole job', () => {
    const insert = { product: { id: 4, name: 'M8 insert' }, unit: 'piece' as const, amount: 8 };
    const resin = { product: null, system: { id: 2, name: 'Tarn', part: 'A' as const }, unit: 'mg' as const };
    const said = partNeeds(
      [
        need({}),
        need({ id: 2 }),
        need({ id: 3, partId: 9, ...insert }),
        need({ id: 4, partId: null, ...insert }),
        need({ id: 5, ...resin, amount: 1_000_000 }),
        need({ id: 6, ...resin, amount: 500_000 }),
      ],
      'metric',
    );
    expect(said).toEqual(
      new Map([
        [7, ['400 mL Hardwax oil', '1.5 kg Tarn, part A']],
        [9, ['8 pieces M8 insert']],
      ]),
    );
  });
});
