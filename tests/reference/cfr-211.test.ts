import { describe, expect, it } from 'vitest';
import { judge } from '@/shared/shelf-life/judge';
import { sayReason } from '@/shared/shelf-life/say-reason';
import { suggestContainers } from '@/shared/shelf-life/suggest-containers';
import { whatToDo } from '@/shared/shelf-life/what-to-do';
import { candidate, codes, day, input, inspection, printed, TODAY, USE_DAY } from '@/tests/shared/shelf-life/fixtures';

// 21 CFR part 211, current good manufacturing practice, used here as a published model of how dated stock is held. Sections
// 211.142 and 211.150 were read; 211.84, 211.87, 211.110 and 211.137 are from memory.

describe('21 CFR 211.142(a): quarantine before release', () => {
  it('what is in quarantine may not be used for anything, however good its date', () => {
    for (const purpose of ['client', 'own', 'test'] as const) {
      expect(judge(input({ lot: { hold: 'quarantine' } }, { purpose })).word).toBe('stop');
    }
  });

  it('it cannot be overridden, only released, and is then judged by its date', () => {
    expect(judge(input({ lot: { hold: 'quarantine' } })).override).toMatchObject({ allowed: false });
    expect(judge(input({ lot: { hold: 'free' } })).word).toBe('use');
  });

  it('it is never suggested', () => {
    const held = candidate({ lot: { hold: 'quarantine' } });
    expect(suggest([held], 10).containers).toEqual([]);
  });
});

describe('21 CFR 211.142(b): stored under appropriate temperature', () => {
  it('a note of storage outside the stated range asks for care within the date', () => {
    expect(codes(judge(input({ container: { conditions: ['stored-out-of-range'] } })))).toEqual([
      'stored-out-of-range',
    ]);
  });
});

describe('21 CFR 211.84 and 211.110: rejected material', () => {
  it('a lot that failed is kept from use whatever its date', () => {
    expect(judge(input({ inspections: [inspection({ passed: false })] })).word).toBe('stop');
    expect(suggest([candidate({ inspections: [inspection({ passed: false })] })], 10).why).toBe('none-good');
  });
});

describe('21 CFR 211.84(a): each lot is withheld from use until it is released', () => {
  const lot = { hold: 'on-hold' as const };

  it('a container of a held lot is withheld, whenever it came and however it is held itself', () => {
    for (const hold of ['free', 'on-hold'] as const) {
      const verdict = judge(input({ lot, container: { hold } }));
      expect(verdict.word).toBe('stop');
      expect(verdict.reasons[0]).toEqual({ code: 'on-hold', weight: 'stop', scope: 'lot' });
    }
  });

  it('the release of the lot releases the container that is free itself, and not one held for a reason of its own', () => {
    expect(judge(input({ lot: { hold: 'free' }, container: { hold: 'free' } })).word).toBe('use');
    expect(judge(input({ lot: { hold: 'free' }, container: { hold: 'quarantine' } })).word).toBe('stop');
  });

  it('the reason names the lot, and what is to be done about the lot', () => {
    const [reason] = judge(input({ lot })).reasons;
    if (!reason) throw new Error('There is no reason.');
    expect(sayReason(reason)).toBe('Its lot is on hold.');
    expect(whatToDo(reason, { materialKind: 'resin-a', prefer: 'metric' })).toBe(
      'Release the lot by a recorded decision before it is used.',
    );
  });
});

describe('21 CFR 211.110(c): what is rejected is controlled so that it is not used', () => {
  it('a held lot is allotted nothing, however little of anything else there is', () => {
    expect(suggest([candidate({ lot: { hold: 'on-hold' } })], 10)).toMatchObject({ containers: [], reaches: false });
  });
});

describe('21 CFR 211.87: retested after long storage or exposure', () => {
  it('a passed retest releases a dated material again, for its own time only', () => {
    const facts = { lot: { bestBefore: printed('2026-10-01') }, inspections: [inspection()] };
    expect(judge(input(facts)).word).toBe('care');
    expect(judge(input(facts, { dayOfUse: day('2027-05-01') })).word).toBe('care');
    expect(judge(input(facts, { dayOfUse: day('2027-05-02') })).word).toBe('stop');
  });
});

describe('21 CFR 211.137: the expiry on the label', () => {
  it('a printed use-by is the end, whatever a retest says', () => {
    const facts = { lot: { bestBefore: undefined, useBy: printed('2026-12-18') }, inspections: [inspection()] };
    expect(judge(input(facts)).word).toBe('stop');
  });

  it('is the stated label date and not a house rule of thumb', () => {
    const verdict = judge(
      input({ policy: { statedLife: { count: 1, unit: 'month' } }, lot: { madeOn: printed('2026-01-01') } }),
    );
    expect(verdict.governing?.basis).toBe('best-before');
  });
});

describe('21 CFR 211.150(a): the oldest approved stock goes first', () => {
  const older = candidate({
    lot: { id: 'old', bestBefore: printed('2027-03-01') },
    container: { id: 'o', label: 'old' },
  });
  const newer = candidate({
    lot: { id: 'new', bestBefore: printed('2027-09-01') },
    container: { id: 'n', label: 'new' },
  });

  it('of two approved lots the older is taken first, in whatever order they stand on the shelf', () => {
    expect(suggest([newer, older], 1200).containers.map((one) => [one.label, one.take])).toEqual([
      ['old', 1000],
      ['new', 200],
    ]);
    expect(suggest([older, newer], 10).containers.map((one) => one.label)).toEqual(['old']);
  });

  it('approved: an older lot that is not released is passed over', () => {
    const held = candidate({ lot: { ...older.lot, hold: 'on-hold' }, container: { id: 'o', label: 'old' } });
    expect(suggest([held, newer], 10).containers.map((one) => one.label)).toEqual(['new']);
  });

  it('a deviation is justified: another lot is preferred only to keep one colour, and the reason is given', () => {
    const half = { ...older, container: { ...older.container, left: 500 } };
    expect(suggest([half, newer], 900)).toMatchObject({ why: 'first-to-expire', containers: [{ label: 'old' }, {}] });
    expect(suggest([half, newer], 900, true)).toMatchObject({ why: 'one-lot', containers: [{ label: 'new' }] });
  });
});

describe('21 CFR 211.150(b): each lot traced for its recall', () => {
  it('one press on the lot stops every container of it, and each suggestion names its lot', () => {
    for (const id of ['t1', 't2', 't3']) {
      expect(codes(judge(input({ lot: { hold: 'recalled' }, container: { id } })))).toEqual(['recalled']);
    }
    expect(suggest([candidate()], 10).containers[0]?.lotId).toBe('lot-1');
  });
});

// Read in a restatement; the annex itself was not opened.
describe('WHO good distribution practices, Annex 5: first expired, first out', () => {
  it('the earliest expiry leaves first, not the earliest made', () => {
    const first = candidate({
      lot: { id: 'a', madeOn: printed('2024-01-01'), bestBefore: printed('2027-09-01') },
      container: { id: 'a', label: 'made first' },
    });
    const second = candidate({
      lot: { id: 'b', madeOn: printed('2026-01-01'), bestBefore: printed('2027-03-01') },
      container: { id: 'b', label: 'ends first' },
    });
    expect(suggest([first, second], 10).containers.map((one) => one.label)).toEqual(['ends first']);
  });
});

function suggest(candidates: ReturnType<typeof candidate>[], asked: number, colourShows = false) {
  return suggestContainers({ candidates, asked, dayOfUse: USE_DAY, today: TODAY, purpose: 'client', colourShows });
}
