import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { ALL_SPECIES } from '@/shared/wood/all-species';
import { CUTS, type Cut, tangentialShare } from '@/shared/wood/cut-share';
import { sayTopNote } from '@/shared/wood/say-top-note';
import { shrinkageFromGreen } from '@/shared/wood/shrinkage-from-green';
import { type TopAsked, topMovement } from '@/shared/wood/top-movement';
import { changeByShrinkage, shrinkageBehind, widthChange } from '@/shared/wood/width-change';
import { knownSpecies } from '@/tests/shared/wood/known-species';

const metre = nanometres(1_000_000_000);
const moving = ALL_SPECIES.filter(
  (each) => (each.moveTangential || each.shrinkTangential) && (each.moveRadial || each.shrinkRadial),
);
const change = (id: string, cut: Cut, fromMc: number, toMc: number) =>
  unwrap(widthChange({ species: knownSpecies(id), width: metre, cut, fromMc, toMc })).value;
const percent = fc.double({ min: 0, max: 35, noNaN: true });

describe('change of a width', () => {
  it('is nothing without a change, shrinks when it dries and swells when it wets', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...moving),
        fc.constantFrom(...CUTS),
        percent,
        percent,
        (species, cut, fromMc, toMc) => {
          const { value } = unwrap(widthChange({ species, width: metre, cut, fromMc, toMc }));
          const dries = Math.min(toMc, 30) - Math.min(fromMc, 30);
          if (Math.abs(dries) > 1e-6) expect(Math.sign(value)).toBe(Math.sign(dries));
          else expect(Math.abs(value)).toBeLessThan(1000);
        },
      ),
    );
  });

  it('does not look milder for a wider season, by more than one part in thirty', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...moving),
        fc.double({ min: 6, max: 12, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        (species, low, wider) => {
          const from = (fromMc: number) =>
            Math.abs(unwrap(widthChange({ species, width: metre, cut: 'flat', fromMc, toMc: 13 })).value);
          expect(from(Math.max(0, low - wider))).toBeGreaterThanOrEqual(from(low) * (29 / 30));
        },
      ),
    );
  });

  it('is nothing above 30 %', () => {
    expect(change('black-walnut', 'flat', 80, 35)).toBe(0);
    expect(change('black-walnut', 'flat', 80, 10)).toBe(change('black-walnut', 'flat', 30, 10));
  });

  it('from green to ovendry is the published shrinkage', () => {
    expect(change('black-cherry', 'flat', 30, 0)).toBe(-71_000_000);
    expect(change('black-cherry', 'quarter', 30, 0)).toBe(-37_000_000);
    expect(shrinkageFromGreen(7.1, 0).value).toBe(7.1);
  });

  it('from green to any moisture content agrees with proportional shrinkage', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 29, noNaN: true }), (mc) => {
        expect(-change('black-cherry', 'flat', 30, mc) / 1e7).toBeCloseTo(shrinkageFromGreen(7.1, mc).value, 6);
      }),
    );
  });

  it('flat moves most, rift between, quarter least, and unknown as flat', () => {
    const [flat, rift, quarter, unknown] = CUTS.map((cut) => Math.abs(change('white-oak', cut, 12, 8)));
    expect(flat).toBeGreaterThan(rift ?? 0);
    expect(rift).toBeGreaterThan(quarter ?? 0);
    expect(unknown).toBe(flat);
  });

  it('a mixed cut is the mean by width', () => {
    expect(
      tangentialShare([
        { cut: 'flat', part: 300 },
        { cut: 'quarter', part: 100 },
      ]),
    ).toBe(0.75);
    expect(() => tangentialShare([])).toThrow(RangeError);
    expect(() =>
      tangentialShare([
        { cut: 'flat', part: -1 },
        { cut: 'rift', part: 3 },
      ]),
    ).toThrow(RangeError);
  });

  it('uses the shrinkage behind a coefficient where none is published, and goes back to the coefficient', () => {
    expect(changeByShrinkage(shrinkageBehind(0.0036), 10, 11)).toBeCloseTo(0.0036, 12);
    expect(change('european-oak', 'flat', 12, 5)).toBeLessThan(change('european-oak', 'flat', 12, 6));
    expect(
      unwrap(widthChange({ species: knownSpecies('european-oak'), width: metre, cut: 'flat', fromMc: 12, toMc: 5 })).how
        .inputs,
    ).toMatchObject({
      tangentialSource: 'din-68100-memory',
    });
  });

  it('refuses what nobody published, and names the direction', () => {
    const ask = (id: string, cut: Cut) =>
      widthChange({ species: knownSpecies(id), width: metre, cut, fromMc: 12, toMc: 8 });
    expect(ask('wych-elm', 'flat')).toEqual({
      ok: false,
      error: { code: 'unknown-movement', direction: 'tangential' },
    });
    expect(ask('wenge', 'flat').ok).toBe(true);
    expect(ask('wenge', 'quarter')).toEqual({ ok: false, error: { code: 'unknown-movement', direction: 'radial' } });
    expect(
      widthChange({ species: knownSpecies('teak'), width: metre, cut: 'flat', fromMc: -1, toMc: 8 }),
    ).toMatchObject({
      error: { code: 'moisture-out-of-range' },
    });
  });
});

describe('a top between two seasons', () => {
  const top: TopAsked = {
    species: knownSpecies('white-oak'),
    width: nanometres(1_000_000_000),
    cut: 'flat',
    fixedMc: 9,
    driestMc: 6,
    dampestMc: 12,
  };

  it('shrinks and grows from the day it is fixed, and a slot halfway leaves half of it and the clearance', () => {
    const { shrinks, grows, slot, betweenSeasons } = unwrap(topMovement(top));
    expect(shrinks.value).toBe(-10_950_000);
    expect(grows.value).toBe(10_950_000);
    expect(betweenSeasons).toBe(21_900_000);
    expect(slot.inward.value).toBe(5_475_000 + 1_000_000);
    expect(slot.outward.value).toBe(5_475_000 + 1_000_000);
  });

  it('fixed wetter than it will ever be, it only shrinks', () => {
    const { shrinks, grows, slot } = unwrap(topMovement({ ...top, fixedMc: 14 }));
    expect(grows.value).toBe(0);
    expect(shrinks.value).toBe(-29_200_000);
    expect(slot.outward.value).toBe(1_000_000);
  });

  it('takes the reach and clearance it is given', () => {
    const asked = { ...top, reach: nanometres(800_000_000), clearance: nanometres(0) };
    expect(unwrap(topMovement(asked)).slot.inward.value).toBe(8_760_000);
  });

  it('notes breadboard ends, battens, and a cut nobody knows', () => {
    expect(unwrap(topMovement(top)).notes).not.toContain('cut-unknown');
    const { notes } = unwrap(topMovement({ ...top, cut: [{ cut: 'unknown', part: 1 }] }));
    expect(notes).toContain('cut-unknown');
    expect(new Set(notes.map(sayTopNote)).size).toBe(notes.length);
  });

  it('refuses swapped seasons', () => {
    expect(topMovement({ ...top, driestMc: 13 })).toEqual({ ok: false, error: { code: 'seasons-swapped' } });
    expect(topMovement({ ...top, species: knownSpecies('wych-elm') })).toMatchObject({ ok: false });
  });
});
