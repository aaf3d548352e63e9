import { describe, expect, it } from 'vitest';
import { cardBatch, nextPart } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/lift-card';
import { startPlan } from '@/app/(shop)/jobs/[id]/pours/start-plan';
import { typeFigures } from '@/app/(shop)/jobs/[id]/pours/type-figures';
import { readTypedPlan, type TypedPlan } from '@/app/(shop)/jobs/[id]/pours/typed-plan';
import { sayRatioCheck } from '@/app/(shop)/resin/say-sheet';
import { fieldOfFact, readTypedSheet, typeSheet } from '@/app/(shop)/resin/typed-sheet';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
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

describe('a data sheet as it is typed', () => {
  const facts = { ...FACTS, from: 'typed' as const, setsTogether: true, shrinkageHundredths: 250 };

  it.each(['metric', 'imperial'] as const)('is read back as it was, in a workshop that is %s', (prefer) => {
    const { facts: read, faults } = readTypedSheet(typeSheet(facts, prefer), prefer);
    expect(faults).toEqual({});
    const { from: _, potLife, depths, ...rest } = facts;
    expect(read).toMatchObject(rest);
    // Fahrenheit is shown by whole degrees.
    expect(Math.abs((read.potLife?.at ?? 0) - (potLife?.at ?? 0))).toBeLessThanOrEqual(3);
    expect(read.depths).toMatchObject(depths.map(({ least, most }) => ({ least, most })));
  });

  it('names what does not read under its field', () => {
    const typed = { ...typeSheet(undefined, 'metric'), massA: '100', demould: 'soon' };
    const odd = { ...typed, depths: [{ least: '5 mm', most: '', upTo: '', mass: '' }] };
    expect(Object.keys(readTypedSheet(odd, 'metric').faults).sort()).toEqual(['demould', 'massB', 'most.0']);
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

  it('takes widths along a river, skipping rows left empty', () => {
    const stations = [
      { at: '0', width: '80' },
      { at: '', width: '' },
      { at: '1.2 m', width: '110' },
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
