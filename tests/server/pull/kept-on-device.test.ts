import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { heldPress, holdPress } from '@/app/_ui/act/held-press';
import { goalNow } from '@/app/(shop)/pull/_ui/goal-now';
import { EMPTY_DRAFT, questionOf, recallDraft, rememberDraft } from '@/app/(shop)/pull/_ui/pull-draft';
import { type PullGoal, recallGoal, rememberGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import { pullQuerySchema, pullSchema } from '@/app/(shop)/pull/schema';
import { day, TODAY } from '@/tests/support/test-book';

const DESK: PullGoal = { jobId: 3, name: 'Desk', purpose: 'client', day: day('2026-12-19') };

describe('what the bench keeps on the device', () => {
  const kept = new Map<string, string>();
  beforeEach(() => {
    kept.clear();
    vi.stubGlobal('localStorage', {
      getItem: (name: string) => kept.get(name) ?? null,
      setItem: (name: string, value: string) => kept.set(name, value),
      removeItem: (name: string) => kept.delete(name),
    });
  });
  afterEach(() => vi.unstubAllGlobals());

  it('gives back an unfinished pull as it was left', () => {
    const draft = { ...EMPTY_DRAFT, code: { text: 'C4K7QM2' }, step: 'amount' as const, amountText: '400' };
    rememberDraft(draft);
    expect(recallDraft()).toEqual(draft);
  });

  it('keeps nothing where nothing was scanned', () => {
    rememberDraft({ ...EMPTY_DRAFT, amountText: '400' });
    expect(kept.size).toBe(0);
  });

  it('lets go what another version kept, or what does not read', () => {
    kept.set('flitchbook.pull-draft', JSON.stringify({ version: 0, draft: { step: 'amount' } }));
    expect(recallDraft()).toEqual(EMPTY_DRAFT);
    kept.set('flitchbook.pull-draft', '{');
    expect(recallDraft()).toEqual(EMPTY_DRAFT);
    kept.set('flitchbook.pull-goal', JSON.stringify({ ...DESK, day: '2026-02-30' }));
    expect(recallGoal()).toBeUndefined();
  });

  it('gives back what it is for', () => {
    rememberGoal(DESK);
    expect(recallGoal()).toEqual(DESK);
  });

  it('gives back a press without an answer, line breaks in it and all', () => {
    holdPress('pull', { key: 'k-12345678', request: 'first\nsecond' });
    expect(heldPress('pull')).toEqual({ key: 'k-12345678', request: 'first\nsecond' });
    holdPress('pull', undefined);
    expect(heldPress('pull')).toBeUndefined();
  });
});

describe('what the bench is for when it opens', () => {
  const DAYS = { today: TODAY, order: 'day-first' } as const;
  const PLACE_IN_TIME = { stage: 'agreed' as const, dueOn: null, contact: '' };
  const job = { ...DESK, id: 3, dayOfUse: DESK.day, client: '', state: 'open' as const, note: '', ...PLACE_IN_TIME };
  it('is the job as the book has it, on its day', () => {
    expect(goalNow({}, [job], { ...DESK, day: day('2026-01-01') }, DAYS)).toEqual({ goal: DESK });
  });

  it('is today where the day has passed, and says so', () => {
    const slipped = { ...job, dayOfUse: day('2026-11-20') };
    const { goal, notice } = goalNow({ jobId: 3 }, [slipped], undefined, DAYS);
    expect(goal).toEqual({ ...DESK, day: TODAY });
    expect(notice).toBe(
      'The day of use of Desk, 20 Nov, has passed, so it is judged for today. Give the job its new day.',
    );
    const own = goalNow({}, [], { name: '', purpose: 'own', day: day('2026-11-24') }, DAYS);
    expect([own.goal?.day, own.notice]).toEqual([TODAY, expect.stringContaining('an own piece, 24 Nov, has passed')]);
  });

  it('lets go of a job that is not open any more', () => {
    expect(goalNow({}, [], DESK, DAYS)).toEqual({ notice: 'Desk is not open any more. Choose what this is for.' });
  });
});

describe('the question an answer belongs to', () => {
  const draft = { ...EMPTY_DRAFT, code: { text: 'C4K7QM2' } };
  it('is another one for another day, job, other part or code, and the same for another amount', () => {
    const own = questionOf(draft, DESK);
    expect(questionOf({ ...draft, amountText: '1 kg', asked: 1_000_000 }, DESK)).toBe(own);
    expect(questionOf({ ...draft, day: DESK.day }, DESK)).toBe(own);
    const others = [
      questionOf({ ...draft, day: day('2026-12-20') }, DESK),
      questionOf({ ...draft, pairedLabel: 'C4V9TN3' }, DESK),
      questionOf({ ...draft, code: { text: 'C4V9TN3' } }, DESK),
      questionOf(draft, { ...DESK, jobId: 4 }),
      questionOf(draft, { ...DESK, purpose: 'own' }),
    ];
    expect(others).not.toContain(own);
  });
});

describe('the schemas of the bench', () => {
  const query = { code: 'C4K7QM2', purpose: 'client', dayOfUse: '2026-12-19' };
  it('read the address as a question', () => {
    expect(pullQuerySchema.parse({ ...query, jobId: '3', asked: '400000' })).toEqual({
      scan: { text: 'C4K7QM2', symbology: undefined },
      purpose: 'client',
      dayOfUse: '2026-12-19',
      jobId: 3,
      asked: 400_000,
    });
  });

  it.each([
    { ...query, dayOfUse: '2026-02-30' },
    { ...query, purpose: 'friend' },
    { ...query, asked: '0' },
    { ...query, jobId: '1.5' },
    { ...query, code: '' },
  ])('refuse a question that cannot be: %o', (bad) => {
    expect(pullQuerySchema.safeParse(bad).success).toBe(false);
  });

  it('refuse an override without its reason', () => {
    const pull = { label: 'C4V9TN3', purpose: 'client', dayOfUse: '2026-12-19', asked: 1, seen: 'stop' };
    expect(pullSchema.safeParse(pull).success).toBe(true);
    const more = { weighed: { afterMg: 1_608_000 }, happenedOn: '2026-11-20' };
    expect(pullSchema.parse({ ...pull, ...more })).toMatchObject(more);
    expect(pullSchema.safeParse({ ...pull, weighed: { afterMg: -1 } }).success).toBe(false);
    expect(pullSchema.safeParse({ ...pull, happenedOn: '2026-02-30' }).success).toBe(false);
    expect(pullSchema.safeParse({ ...pull, override: { reason: '  ', inspectionId: 1 } }).success).toBe(false);
  });
});
