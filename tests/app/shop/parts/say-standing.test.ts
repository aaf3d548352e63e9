import { describe, expect, it } from 'vitest';
import { suggestInspection } from '@/app/(shop)/_parts/acts/suggest-inspection';
import { sayStanding } from '@/app/(shop)/_parts/stock/say-standing';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { judge } from '@/shared/shelf-life/judge';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Policy } from '@/shared/shelf-life/types/policy';

const TODAY = '2026-11-25' as CalendarDate;
const day = (text: string) => text as CalendarDate;

describe('how a container stands, in a list', () => {
  const policy: Policy = {
    kind: 'inspectable',
    statedLife: { count: 12, unit: 'month' },
    statedLifeBasis: 'data-sheet',
    openedLifeBasis: 'data-sheet',
    careWindowDays: 14,
    freezingRuins: false,
    colourShows: false,
  };
  const standing = (more: { bestBefore?: string; hold?: 'on-hold'; policy?: Policy }) => {
    const candidate: Candidate = {
      policy: more.policy ?? policy,
      lot: {
        id: '1',
        code: 'K',
        hold: 'free',
        bestBefore: more.bestBefore ? { date: day(more.bestBefore), precision: 'day', confirmed: true } : undefined,
      },
      container: { id: '2', label: 'C4K7VMX', left: 1, conditions: [], hold: more.hold ?? 'free' },
      inspections: [],
    };
    return sayStanding(judge({ ...candidate, purpose: 'client', dayOfUse: TODAY, today: TODAY }), {
      today: TODAY,
      order: 'day-first',
      prefer: 'metric',
    });
  };

  it('says the governing limit, past or to come, once', () => {
    expect(standing({ bestBefore: '2026-12-12' })).toEqual({ limit: 'Good to 12 Dec', because: undefined });
    expect(standing({ bestBefore: '2026-11-25' }).limit).toBe('Good to 25 Nov');
    expect(standing({ bestBefore: '2026-11-24' })).toEqual({ limit: 'Was good to 24 Nov', because: undefined });
  });
  it('adds the worst reason where that is not the date', () => {
    expect(standing({ bestBefore: '2027-12-12', hold: 'on-hold' })).toEqual({
      limit: 'Good to 12 Dec 2027',
      because: 'This container is on hold.',
    });
  });
  it('tells no date from no limit', () => {
    expect(standing({}).limit).toBe('No date known');
    expect(standing({ policy: { ...policy, kind: 'keeps', statedLife: undefined } }).limit).toBe('Keeps');
  });
  it('suggests half of the sealed life for a passed inspection (FED-STD-793 §3.3)', () => {
    expect(suggestInspection(policy, TODAY)?.until).toBe('2027-05-25');
    expect(suggestInspection({ ...policy, kind: 'fixed' }, TODAY)).toBeUndefined();
  });
});
