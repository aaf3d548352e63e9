import { describe, expect, it } from 'vitest';
import { governingLimit } from '@/shared/shelf-life/governing-limit';
import { limitsOf } from '@/shared/shelf-life/limits-of';
import { candidate, day, inspection, printed, TODAY } from '@/tests/shared/shelf-life/fixtures';

type Facts = Parameters<typeof candidate>[0];
const limits = (facts: Facts) => limitsOf({ ...candidate(facts), today: TODAY });
const short = (facts: Facts) =>
  limits(facts).map((one) => [one.basis, one.lastGoodDay, one.effective ? 'counts' : one.supersededBy]);
const governs = (facts: Facts) => governingLimit(limits(facts))?.basis;

const undated = { bestBefore: undefined };
const opened = (text: string) => ({ opened: { on: day(text), sureness: 'known' } }) as const;
const mine = { scope: 'container', containerId: 'tin-1' } as const;
const year = { count: 12, unit: 'month' } as const;

describe('bases', () => {
  it('are all five shown when known, and only those', () => {
    const facts: Facts = {
      policy: { statedLife: year, statedLifeBasis: 'label', openedLife: { count: 6, unit: 'month' } },
      lot: { useBy: printed('2027-06-30'), bestBefore: printed('2027-03-31'), madeOn: printed('2026-01-15') },
      container: opened('2026-09-01'),
      inspections: [inspection({ validUntil: day('2027-02-15') })],
    };
    expect(short(facts)).toEqual([
      ['use-by', '2027-06-30', 'counts'],
      ['best-before', '2027-03-31', 'counts'],
      ['stated-life', '2027-01-15', 'inspection'],
      ['opened-life', '2027-03-01', 'counts'],
      ['inspection', '2027-02-15', 'counts'],
    ]);
    expect(governs(facts)).toBe('inspection');
    expect(short({ lot: undated })).toEqual([]);
  });

  it('say what each was computed from', () => {
    const [stated, open] = limits({
      policy: { statedLife: year, statedLifeBasis: 'data-sheet', openedLife: year },
      lot: { ...undated, madeOn: printed('2026-05-31', 'month') },
      container: opened('2026-06-15'),
    });
    expect(stated?.from).toEqual({ start: '2026-05-01', precision: 'month', life: year, source: 'data-sheet' });
    expect(open?.from).toEqual({ start: '2026-06-15', precision: 'day', life: year, source: 'house-default' });
  });
});

describe('precision', () => {
  it('month only means the last day of that month, however the date was stored', () => {
    for (const stored of ['2028-02-01', '2028-02-15', '2028-02-29']) {
      expect(short({ lot: { bestBefore: printed(stored, 'month') } })).toEqual([
        ['best-before', '2028-02-29', 'counts'],
      ]);
    }
    expect(short({ lot: { bestBefore: printed('2028-02-01', 'year') } })).toEqual([
      ['best-before', '2028-12-31', 'counts'],
    ]);
  });

  it('a made-on month is read as its first day, the cautious one', () => {
    const facts = (stored: string, precision: 'month' | 'year'): Facts => ({
      policy: { statedLife: year },
      lot: { ...undated, madeOn: printed(stored, precision) },
    });
    expect(short(facts('2026-05-31', 'month'))).toEqual([['stated-life', '2027-05-01', 'counts']]);
    expect(short(facts('2026-05-31', 'year'))).toEqual([['stated-life', '2027-01-01', 'counts']]);
  });

  it('months are added on the calendar with the end of the month clamped', () => {
    expect(
      short({
        policy: { statedLife: { count: 6, unit: 'month' } },
        lot: { ...undated, madeOn: printed('2026-08-31') },
      }),
    ).toEqual([['stated-life', '2027-02-28', 'counts']]);
  });

  it('a start that is still to come counts from today', () => {
    expect(
      short({
        policy: { statedLife: year, openedLife: year },
        lot: { ...undated, madeOn: printed('2027-03-01') },
        container: opened('2027-04-01'),
      }),
    ).toEqual([
      ['stated-life', '2027-11-25', 'counts'],
      ['opened-life', '2027-11-25', 'counts'],
    ]);
  });
});

describe('the container’s own label', () => {
  const made = { madeOn: printed('2026-01-01') };

  it('outranks a house default, whether the default is earlier or later', () => {
    for (const count of [3, 60]) {
      const facts: Facts = { policy: { statedLife: { count, unit: 'month' } }, lot: made };
      expect(limits(facts)[1]).toMatchObject({ basis: 'stated-life', effective: false, supersededBy: 'printed-date' });
      expect(governs(facts)).toBe('best-before');
    }
  });

  it('does not outrank a stated life from the label or the data sheet: the earliest governs', () => {
    for (const statedLifeBasis of ['label', 'data-sheet'] as const) {
      expect(governs({ policy: { statedLife: year, statedLifeBasis }, lot: made })).toBe('stated-life');
    }
  });

  it('outranks the policy’s opened life, longer or shorter', () => {
    for (const count of [1, 24]) {
      const facts: Facts = {
        policy: { openedLife: { count: 6, unit: 'month' }, openedLifeBasis: 'data-sheet' },
        container: { ...opened('2026-09-01'), statedOpenedLife: { count, unit: 'month' } },
      };
      expect(limits(facts)[1]?.from).toMatchObject({ source: 'label', life: { count } });
    }
  });

  it('leaves an opened life by house default in force, which is another matter', () => {
    expect(governs({ policy: { openedLife: { count: 3, unit: 'month' } }, container: opened('2026-09-01') })).toBe(
      'opened-life',
    );
  });

  it('counts on a material that otherwise keeps, whose policy lives do not', () => {
    const facts: Facts = {
      policy: { kind: 'keeps', statedLife: year, openedLife: year },
      lot: made,
      container: { ...opened('2026-09-01'), statedOpenedLife: { count: 3, unit: 'month' } },
    };
    expect(short(facts)).toEqual([
      ['best-before', '2027-12-31', 'counts'],
      ['opened-life', '2026-12-01', 'counts'],
    ]);
    expect(short({ ...facts, lot: { ...undated, ...made }, container: opened('2026-09-01') })).toEqual([]);
  });
});

describe('policy kinds', () => {
  const past = { bestBefore: printed('2026-10-01') };

  it('fixed: nothing extends it', () => {
    expect(short({ policy: { kind: 'fixed' }, lot: past, inspections: [inspection()] })).toEqual([
      ['best-before', '2026-10-01', 'counts'],
    ]);
  });

  it('inspectable: a passed inspection extends best-before and stated life to its own date', () => {
    expect(short({ lot: past, inspections: [inspection()] })).toEqual([
      ['best-before', '2026-10-01', 'inspection'],
      ['inspection', '2027-05-01', 'counts'],
    ]);
  });

  it('inspectable: never a printed use-by', () => {
    const facts: Facts = { lot: { ...past, useBy: printed('2026-12-01') }, inspections: [inspection()] };
    expect(short(facts)[0]).toEqual(['use-by', '2026-12-01', 'counts']);
    expect(governs(facts)).toBe('use-by');
    expect(short({ lot: { ...undated, useBy: printed('2026-12-01') }, inspections: [inspection()] })).toEqual([
      ['use-by', '2026-12-01', 'counts'],
      ['inspection', '2027-05-01', 'not-needed'],
    ]);
  });

  it('inspectable: an inspection that ends before the best-before does not shorten it', () => {
    expect(short({ inspections: [inspection()] })).toEqual([
      ['best-before', '2027-12-31', 'counts'],
      ['inspection', '2027-05-01', 'not-needed'],
    ]);
  });

  it('keeps: no limit is stated, and an inspection adds none', () => {
    expect(short({ policy: { kind: 'keeps' }, lot: undated, inspections: [inspection()] })).toEqual([
      ['inspection', '2027-05-01', 'not-needed'],
    ]);
    expect(governs({ policy: { kind: 'keeps' }, lot: undated, inspections: [inspection()] })).toBeUndefined();
  });

  it('an inspection made before opening says nothing about the opened life', () => {
    const facts = (on: string, scope: 'lot' | 'container'): Facts => ({
      policy: { openedLife: { count: 1, unit: 'month' } },
      container: opened('2026-10-10'),
      inspections: [inspection({ ...mine, on: day(on), scope })],
    });
    expect(governs(facts('2026-10-09', 'container'))).toBe('opened-life');
    expect(governs(facts('2026-10-10', 'container'))).toBe('inspection');
    expect(governs(facts('2026-11-01', 'lot'))).toBe('opened-life');
  });

  it('extends the lot’s dates by one inspection and the opened life by another, the earlier governing', () => {
    const facts: Facts = {
      policy: { openedLife: { count: 1, unit: 'month' } },
      lot: past,
      container: opened('2026-10-10'),
      inspections: [
        inspection({ id: 'lot', validUntil: day('2027-06-01') }),
        inspection({ ...mine, id: 'tin', validUntil: day('2027-02-01') }),
      ],
    };
    expect(governingLimit(limits(facts))).toMatchObject({ lastGoodDay: '2027-02-01', from: { inspectionId: 'tin' } });
  });
});

describe('which inspection stands', () => {
  const past = { bestBefore: printed('2026-10-01') };
  const basis = (...inspections: ReturnType<typeof inspection>[]) => governs({ lot: past, inspections });
  const pass = inspection({ on: day('2026-10-01') });
  const fail = inspection({ id: 'look-2', on: day('2026-10-20'), passed: false });

  it('a failed one later than a passed one cancels it', () => {
    expect(basis(pass, fail)).toBe('best-before');
    expect(basis(fail, pass)).toBe('best-before');
  });

  it('a passed one after the failure stands, an older pass with a further date does not come back', () => {
    const later = inspection({ id: 'look-3', on: day('2026-11-01'), validUntil: day('2027-02-01') });
    expect(governingLimit(limits({ lot: past, inspections: [pass, fail, later] }))?.lastGoodDay).toBe('2027-02-01');
  });

  it('of a pass and a failure on one day the failure stands', () => {
    expect(basis(pass, { ...fail, on: pass.on })).toBe('best-before');
  });

  it('a pass cancelled on its own day does not come back once a later pass clears the failure', () => {
    const later = inspection({ id: 'look-3', on: day('2026-11-01'), validUntil: day('2027-02-01') });
    const inspections = [pass, { ...fail, on: pass.on }, later];
    expect(governingLimit(limits({ lot: past, inspections }))?.lastGoodDay).toBe('2027-02-01');
  });

  it('one of another container says nothing of this one', () => {
    expect(basis({ ...pass, scope: 'container', containerId: 'tin-9' })).toBe('best-before');
    expect(basis({ ...pass, scope: 'container', containerId: 'tin-1' })).toBe('inspection');
    expect(basis(pass, { ...fail, scope: 'container', containerId: 'tin-9' })).toBe('inspection');
  });

  it('a failure of this container is not cleared by a pass of the lot', () => {
    const lotPass = inspection({ id: 'look-3', on: day('2026-11-01') });
    const tinFail = { ...fail, ...mine };
    expect(basis(tinFail, lotPass)).toBe('best-before');
    expect(basis(tinFail, { ...lotPass, ...mine })).toBe('inspection');
  });

  it('a failure of the lot is cleared for this container by its own later pass', () => {
    expect(basis(fail, inspection({ ...mine, id: 'look-3', on: day('2026-11-01') }))).toBe('inspection');
  });

  it('one dated after today has not happened', () => {
    expect(basis(inspection({ on: day('2026-11-26') }))).toBe('best-before');
    expect(basis(inspection({ on: day('2026-11-25') }))).toBe('inspection');
  });

  it('a pass that says no day extends nothing, yet clears a failure', () => {
    const bare = inspection({ id: 'look-3', on: day('2026-11-01'), validUntil: undefined });
    expect(basis(bare)).toBe('best-before');
    const after = inspection({ id: 'look-4', on: day('2026-11-02') });
    expect(basis(fail, bare, after)).toBe('inspection');
  });
});

describe('governingLimit', () => {
  it('is the earliest that counts, and of two on one day the printed one', () => {
    const facts: Facts = {
      policy: { openedLife: { count: 3, unit: 'month' } },
      lot: { bestBefore: printed('2026-12-01') },
      container: opened('2026-09-01'),
    };
    expect(governs(facts)).toBe('best-before');
    expect(governingLimit([...limits(facts)].reverse())?.basis).toBe('best-before');
    expect(governingLimit([])).toBeUndefined();
  });
});
