import { describe, expect, it } from 'vitest';
import { adviceOnCondition, type MendableCondition } from '@/shared/shelf-life/advice-on-condition';
import { MATERIAL_KIND_IDS } from '@/shared/shelf-life/material-kinds';

const CONDITIONS: MendableCondition[] = ['crystals', 'haze', 'settled', 'darkened', 'frozen-thaw'];
const advice = (condition: MendableCondition, materialKind: string, prefer: 'metric' | 'imperial' = 'metric') =>
  adviceOnCondition(condition, { materialKind, prefer });

/** Safety data sheets class these as flammable or combustible liquids (GHS chapter 2.6); from memory. */
const BURNS = [
  'hardwax-oil',
  'two-part-oil',
  'oil-finish',
  'varnish',
  'lacquer',
  'pre-catalysed-lacquer',
  'shellac-mixed',
  'contact-cement',
];

describe('what to do about what is seen in a material (common practice)', () => {
  it('always defers to the data sheet', () => {
    for (const kind of [...MATERIAL_KIND_IDS, 'never heard of']) {
      for (const condition of CONDITIONS) expect(advice(condition, kind), `${kind} ${condition}`).toMatch(/data sheet/);
    }
  });

  it('warms resin as its data sheet says, in the units of the book', () => {
    expect(advice('crystals', 'resin-a')).toContain('as its data sheet says, often to 50 to 60 °C');
    expect(advice('crystals', 'resin-a', 'imperial')).toContain('often to 122 to 140 °F');
    expect(advice('crystals', 'resin-a', 'imperial')).not.toContain('°C');
  });

  it('minds the vapour of a hardener that is warmed', () => {
    expect(advice('crystals', 'resin-b')).toMatch(/gloves.*vapour/);
  });

  it('never sends what burns to any heat', () => {
    for (const kind of BURNS) {
      for (const condition of ['crystals', 'haze', 'frozen-thaw'] as const) {
        expect(advice(condition, kind), `${kind} ${condition}`).toMatch(/^Never warm it over a flame or a heater/);
      }
      for (const condition of CONDITIONS) expect(advice(condition, kind)).not.toMatch(/°|lid loose|\bWarm it/);
      expect(advice('settled', kind)).toMatch(/strain out any skin/);
    }
  });

  it('warms nothing but resin and hardener', () => {
    for (const kind of MATERIAL_KIND_IDS.filter((each) => each !== 'resin-a' && each !== 'resin-b')) {
      for (const condition of CONDITIONS) expect(advice(condition, kind), kind).not.toMatch(/\bWarm it/);
    }
  });

  it('gives up on a waterborne material that stays grainy when it has thawed', () => {
    for (const kind of ['waterborne', 'pva', 'hide-glue']) {
      expect(advice('frozen-thaw', kind)).toMatch(/thaw at room temperature.*grainy.*do not use it/);
    }
  });

  it('has only the neutral sentence for a kind it does not know', () => {
    for (const kind of ['other', 'pigment', 'abrasive', 'never heard of', 'toString']) {
      expect(new Set(CONDITIONS.map((condition) => advice(condition, kind)))).toEqual(
        new Set(['Do as its data sheet says before you use it. If it says nothing, set it aside.']),
      );
    }
  });
});
