import { describe, expect, it } from 'vitest';
import { readPlan } from '@/app/_server/pours/kept-plan';
import { sheetFacts } from '@/app/_server/pours/sheet-facts';
import { cardBatch, nextPart } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/lift-card';
import { mindLift } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/mind-lift';
import { isBelowReady, sayBelow } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/say-below';
import { sayJoin } from '@/app/(shop)/jobs/[id]/pours/say-pour';
import { sealOfBanks } from '@/app/(shop)/jobs/[id]/pours/seal-of-banks';
import { startPlan } from '@/app/(shop)/jobs/[id]/pours/start-plan';
import { typeFigures } from '@/app/(shop)/jobs/[id]/pours/type-figures';
import { anotherStation, readTypedPlan, type TypedPlan } from '@/app/(shop)/jobs/[id]/pours/typed-plan';
import { sayRatioCheck } from '@/app/(shop)/resin/say-sheet';
import { fieldOfFact, readTypedSheet, typeSheet } from '@/app/(shop)/resin/typed-sheet';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import { FACTS, FIGURES, g, mm } from '@/tests/support/pour-figures';

const TODAY = '2026-11-25' as CalendarDate;
const TYPING = { prefer: 'metric' as const, today: TODAY, order: 'day-first' as const };

describe('a batch on the mix card', () => {
  const by = { parts: { a: 100, b: 45 }, toleranceTenths: 20, step: g(1) };
  const batches = [{ a: g(1104), b: g(497), total: g(1601), ratioErrorTenths: 0 }];
  const weighed = (part: 'A' | 'B', grams: number, minute: number) => ({
    id: minute,
    entryId: minute,
    batch: 1,
    part,
    stockId: 1,
    label: 'C4K7VMX',
    lot: null,
    product: 'Resin',
    mass: g(grams),
    at: `2026-11-25T10:${String(minute).padStart(2, '0')}:00.000Z`,
    below: {},
  });
  const card = (...rows: ReturnType<typeof weighed>[]) => cardBatch({ batches, weighed: rows }, 1, by);

  it('asks for A, then for as much B as the A that is really in asks for', () => {
    expect(nextPart([card()])).toEqual({ batch: 1, part: 'A' });
    const { parts } = card(weighed('A', 1120, 1));
    expect(parts.map(({ target, done }) => [target, done])).toEqual([
      [g(1104), true],
      [g(504), false],
    ]);
    expect(nextPart([card(weighed('A', 1104, 1))])).toEqual({ batch: 1, part: 'B' });
  });

  it('goes on with the same part where the tin was too small, and is done within the tolerance', () => {
    expect(nextPart([card(weighed('A', 700, 1))])).toEqual({ batch: 1, part: 'A' });
    const full = card(weighed('A', 700, 1), weighed('A', 404, 2), weighed('B', 490, 3));
    expect(nextPart([full])).toBeUndefined();
    expect(full.ratio).toMatchObject({ errorTenths: -14, within: true });
  });

  it('starts the clock when the second part went in, whatever is added later', () => {
    expect(card(weighed('A', 1104, 1)).mixedAt).toBeUndefined();
    const mixed = card(weighed('A', 1104, 1), weighed('B', 440, 4), weighed('B', 57, 9));
    expect(mixed.mixedAt).toBe('2026-11-25T10:04:00.000Z');
  });
});

describe('the mix card', () => {
  const at = Date.parse('2026-11-25T15:00:00Z');
  const below = { nr: 1, on: TODAY, at, isExact: true, againFromHours: 12, againToHours: 24 };
  const later = (hours: number) => at + hours * 3_600_000;

  it('says how the lift below stands, and waits until what it asks for is said', () => {
    expect(sayBelow(below, later(3))).toMatch(
      /^Too early\. Lift 1 below was poured 3 hours ago; .* wait another 9 hours/,
    );
    expect(sayBelow(below, later(0.25))).toContain('poured less than an hour ago');
    expect(sayBelow(below, later(22))).toContain('from 12 to 24 hours: while it is tacky');
    expect(sayBelow({ ...below, isExact: false }, later(30))).toMatch(
      /about 30 hours ago.* sand it dull with a dust mask/,
    );
    expect(sayBelow({ ...below, againToHours: undefined }, later(30))).toContain('names no time');
    expect(isBelowReady(below, later(3), { sanded: true, early: ' ' })).toBe(false);
    expect(isBelowReady(below, later(3), { early: 'A trial' })).toBe(true);
    expect(isBelowReady(below, later(22), {})).toBe(true);
    expect(isBelowReady(below, later(30), { early: 'A trial' })).toBe(false);
    expect(isBelowReady(below, later(30), { sanded: true })).toBe(true);
    expect(isBelowReady(null, later(30), {})).toBe(true);
  });

  it('says for the next lift how it joins by when the one below was really poured', () => {
    const day = (text: string) => text as CalendarDate;
    expect(sayJoin(undefined, TODAY, TODAY, at)).toBe('');
    expect(sayJoin(below, TODAY, TODAY, later(2))).toBe(': the one below is too fresh yet');
    expect(sayJoin(below, day('2026-11-26'), TODAY, later(2))).toBe(': while the one below is tacky');
    expect(sayJoin(below, day('2026-11-27'), TODAY, later(2))).toBe(': sand the one below first');
  });

  it('minds the room as it is, and a batch larger than any the pot life was measured with', () => {
    const sheet = { ...FACTS, from: 'sheet' as const, mostRoom: tenthsCelsius(250) };
    const lift = { sheet, nr: 1, depth: mm(30), mass: g(1601), largest: g(1601) };
    const codes = (of: typeof lift, room: number) => mindLift(of, tenthsCelsius(room)).map(({ code }) => code);
    expect(codes(lift, 210)).toEqual([]);
    expect(codes(lift, 251)).toEqual(['room-too-warm']);
    expect(codes({ ...lift, largest: g(10_001) }, 210)).toEqual(['batch-not-measured']);
    expect(codes({ ...lift, nr: 0, depth: mm(0), largest: g(10_001) }, 210)).toEqual(['batch-not-measured']);
  });
});

describe('what the book kept of a sheet before pot lives had rows', () => {
  const old = { minutes: 40, mass: g(100), at: tenthsCelsius(230) };
  const { potLives: _, ...facts } = FACTS;

  it('is read as a sheet of one row, and so is the sheet of a plan', () => {
    expect(sheetFacts({ ...facts, from: 'sheet', potLife: old })).toEqual({ ...facts, from: 'sheet', potLives: [old] });
    const kept = JSON.stringify({ sheet: { ...facts, from: 'sheet', potLife: old }, reason: '' });
    expect(readPlan(kept).sheet.potLives).toEqual([old]);
    expect(sheetFacts({ ...FACTS, from: 'sheet' }).potLives).toEqual(FACTS.potLives);
  });
});

describe('a data sheet as it is typed', () => {
  const facts = { ...FACTS, from: 'typed' as const, setsTogether: true, shrinkageHundredths: 250 };

  it.each(['metric', 'imperial'] as const)('is read back as it was, in a workshop that is %s', (prefer) => {
    const { facts: read, faults } = readTypedSheet(typeSheet(facts, prefer), prefer);
    expect(faults).toEqual({});
    const { from: _, potLives, depths, ...rest } = facts;
    expect(read).toMatchObject(rest);
    // Fahrenheit is shown by whole degrees.
    expect(read.potLives).toMatchObject((potLives ?? []).map(({ minutes, mass }) => ({ minutes, mass })));
    for (const [nr, { at }] of (potLives ?? []).entries()) {
      expect(Math.abs((read.potLives?.[nr]?.at ?? 0) - at)).toBeLessThanOrEqual(3);
    }
    expect(read.depths).toMatchObject(depths.map(({ least, most }) => ({ least, most })));
  });

  it('names what does not read under its field', () => {
    const typed = { ...typeSheet(undefined, 'metric'), massA: '100', demould: 'soon' };
    const depths = [{ least: '5 mm', most: '', upTo: '', mass: '' }];
    const potLives = [
      { minutes: '40', mass: '', at: '' },
      { minutes: '', mass: '1 kg', at: 'warm' },
    ];
    const { facts: read, faults } = readTypedSheet({ ...typed, depths, potLives }, 'metric');
    expect(Object.keys(faults).sort()).toEqual(['demould', 'massB', 'most.0', 'potAt.1', 'potMinutes.1']);
    // What is left out of a row is as sheets usually have it: 100 g at 23 °C.
    expect(read.potLives).toEqual([{ minutes: 40, mass: g(100), at: 230 }]);
    expect([fieldOfFact('byMass'), fieldOfFact('depthMost.2'), fieldOfFact('densityA')]).toEqual([
      'massB',
      'most.2',
      'densityA',
    ]);
  });

  it('is checked against itself while it is typed', () => {
    expect(sayRatioCheck(FACTS)).toMatchObject({ ok: true });
    const wrong = sayRatioCheck({ ...FACTS, byMass: { a: 100, b: 83 } });
    expect(wrong).toMatchObject({ ok: false });
    expect(wrong?.says).toContain('100 to 83; volumes and densities make it 100 to 45.5');
    expect(sayRatioCheck({})).toBeUndefined();
  });
});

describe('a pour as it is typed', () => {
  const start = startPlan({ fills: [], wood: [] }, { units: 'metric', systemId: 1, first: '1 Dec 2026' });
  const plan = (change: Partial<TypedPlan>) => readTypedPlan({ ...start, name: 'River', ...change }, TYPING);

  it('is read back from the figures of a plan', () => {
    const { figures, faults, first } = plan(typeFigures(FIGURES, 'metric'));
    expect(faults).toEqual({});
    expect(first).toBe('2026-12-01');
    expect({ ...figures, sealPerSquareMetre: 0 }).toEqual({ ...FIGURES, sealPerSquareMetre: 0 });
  });

  it('takes the ticked fills of the drawing, and none is a fault of its own', () => {
    const fills = [
      { id: 'a', name: 'gap', on: true, area: '26', depth: '30 mm' },
      { id: 'b', name: 'knot', on: false, area: '9', depth: '12 mm' },
    ];
    expect(plan({ from: 'drawing', fills }).figures?.space).toEqual({
      from: 'fills',
      fills: [{ area: 2600, depth: mm(30) }],
    });
    expect(plan({ from: 'drawing', fills: [] }).faults.fills).toBe('Tick what the resin goes into.');
  });

  it('takes a river by the area of its outlines and a typed depth, before whatever else is ticked', () => {
    const read = (change: Partial<TypedPlan>, riverArea?: number) =>
      readTypedPlan({ ...start, name: 'River', from: 'river', ...change }, { ...TYPING, riverArea });
    const fills = [{ id: 'a', name: 'knot', on: true, area: '26', depth: '30 mm' }];
    expect(read({ riverDepth: '40', fills }, 120_000).figures?.space).toEqual({
      from: 'fills',
      fills: [
        { area: 120_000, depth: mm(40) },
        { area: 2600, depth: mm(30) },
      ],
    });
    expect(read({ riverDepth: '40' }).faults.river).toContain('not there any more');
    expect(read({ riverDepth: '0' }, 120_000).faults.riverDepth).toBe('It must be more than nothing.');
    expect(Object.keys(read({ riverDepth: 'deep' }, 120_000).faults)).toEqual(['riverDepth']);
  });

  it('begins with the river that was found: as deep as the finished top, both banks to be sealed', () => {
    const river = { finished: mm(40), banks: [1500, 1490] as [number, number] };
    const choices = { fills: [{ id: 'S/mark/1', label: 'S', what: 'knot', area: 100, depth: mm(10) }], wood: [] };
    const begun = startPlan(choices, { units: 'metric', systemId: 1, first: '', river });
    // 2.99 m of bank by 40 mm.
    expect(begun).toMatchObject({ name: 'River', from: 'river', riverDepth: '40 mm', sealArea: '0.12' });
    expect(begun.fills.map(({ on }) => on)).toEqual([false]);
    const named = (wanted: string[]) => startPlan(choices, { units: 'metric', systemId: 1, first: '', wanted });
    expect(named(['S/mark/1']).fills.map(({ on }) => on)).toEqual([true]);
    expect(named([]).fills.map(({ on }) => on)).toEqual([false]);
    expect(startPlan(choices, { units: 'metric', systemId: 1, first: '' }).fills.map(({ on }) => on)).toEqual([true]);
    // 2.99 m by 65 mm in square feet of 92 903.04 mm².
    expect(Number(sealOfBanks([1500, 1490], mm(65), 'imperial'))).toBeCloseTo((2990 * 65) / 92_903.04, 3);
  });

  it('takes widths along a river, skipping rows left empty', () => {
    const stations = [
      { ...anotherStation(), at: '0', width: '80' },
      anotherStation(),
      { ...anotherStation(), at: '1.2 m', width: '110' },
    ];
    const { space } = plan({ from: 'stations', stations, depth: '40' }).figures ?? {};
    expect(space).toEqual({
      from: 'stations',
      depth: mm(40),
      widths: [
        { at: mm(0), width: mm(80) },
        { at: mm(1200), width: mm(110) },
      ],
    });
  });

  it('takes the width at the bottom and the depth of a station where it has its own, and asks for none below then', () => {
    const stations = [
      { at: '0', width: '80', bottom: '60', depth: '38' },
      { at: '1.2 m', width: '110', bottom: '', depth: '42' },
    ];
    const widths = [
      { at: mm(0), width: mm(80), bottom: mm(60), depth: mm(38) },
      { at: mm(1200), width: mm(110), depth: mm(42) },
    ];
    const typed = { from: 'stations' as const, stations };
    const { figures, faults } = plan({ ...typed, depth: '' });
    expect([faults, figures?.space]).toEqual([{}, { from: 'stations', depth: mm(42), widths }]);
    // And back, as somebody would type them.
    const again = figures && typeFigures(figures, 'metric');
    expect(readTypedPlan({ ...start, name: 'River', ...again }, TYPING).figures?.space).toEqual(figures?.space);
    const partly = [...stations, { ...anotherStation(), at: '2 m', width: '90' }];
    expect(Object.keys(plan({ ...typed, stations: partly, depth: '' }).faults)).toEqual(['depth']);
    const wrong = stations.map((row) => ({ ...row, bottom: 'wide', depth: '0' }));
    expect(Object.keys(plan({ ...typed, stations: wrong, depth: '40' }).faults)).toEqual([
      'bottom.0',
      'deep.0',
      'bottom.1',
      'deep.1',
    ]);
  });

  it('names everything that is wrong at once', () => {
    const { faults } = plan({
      name: ' ',
      systemId: '',
      room: 'warm',
      bucket: '',
      first: 'soon',
      lifts: '0',
      leakage: '200',
    });
    for (const field of ['name', 'systemId', 'room', 'bucket', 'first', 'lifts', 'leakage', 'length']) {
      expect(faults, field).toHaveProperty(field);
    }
  });
});
