import { describe, expect, it } from 'vitest';
import { defaultPolicy } from '@/shared/shelf-life/default-policy';
import { inspectionLife } from '@/shared/shelf-life/inspection-life';
import { judge } from '@/shared/shelf-life/judge';
import { isMaterialKind, MATERIAL_KIND_IDS, MATERIAL_KINDS } from '@/shared/shelf-life/material-kinds';
import { day, input, printed } from '@/tests/shared/shelf-life/fixtures';

describe('defaultPolicy', () => {
  it.each(MATERIAL_KIND_IDS)('%s is a house default throughout and says its kind of source', (kind) => {
    const policy = defaultPolicy(kind);
    expect([policy.statedLifeBasis, policy.openedLifeBasis]).toEqual(['house-default', 'house-default']);
    expect(policy.says).toMatch(/common practice|trade press|technical bulletins|follow the container/);
    expect(policy.says).toMatch(/\.$/);
    if (policy.kind === 'keeps') expect([policy.statedLife, policy.openedLife]).toEqual([undefined, undefined]);
    if (policy.storage) expect(policy.storage.leastC).toBeLessThan(policy.storage.mostC);
  });

  it('takes the cautious end of each range', () => {
    expect(defaultPolicy('cyanoacrylate')).toMatchObject({
      statedLife: { count: 8, unit: 'month' },
      openedLife: { count: 1, unit: 'month' },
    });
    expect(defaultPolicy('shellac-mixed').statedLife).toEqual({ count: 6, unit: 'month' });
    expect(defaultPolicy('polyurethane-glue').statedLife).toEqual({ count: 9, unit: 'month' });
    expect(defaultPolicy('pre-catalysed-lacquer')).toMatchObject({
      kind: 'fixed',
      statedLife: { count: 6, unit: 'week' },
    });
  });

  it('lets freezing ruin waterborne finish and not resin', () => {
    expect(defaultPolicy('waterborne').freezingRuins).toBe(true);
    expect(defaultPolicy('resin-a').freezingRuins).toBe(false);
  });

  it('suggests half of the life for a passed inspection, where one can extend', () => {
    for (const kind of MATERIAL_KIND_IDS) {
      const { kind: policyKind, statedLife, suggestedInspectionLife } = defaultPolicy(kind);
      const expected = policyKind === 'inspectable' && statedLife ? inspectionLife(statedLife) : undefined;
      expect(suggestedInspectionLife).toEqual(expected);
    }
    expect(defaultPolicy('resin-a').suggestedInspectionLife).toEqual({ count: 6, unit: 'month' });
    expect(defaultPolicy('pre-catalysed-lacquer').suggestedInspectionLife).toBeUndefined();
  });

  it('leaves a material that follows its container unknown without a date, and judges it by one that is printed', () => {
    const policy = defaultPolicy('two-part-oil');
    const facts = (bestBefore: ReturnType<typeof printed> | undefined) =>
      judge({ ...input({ lot: { bestBefore, madeOn: printed('2026-01-01') } }), policy });
    expect(facts(undefined).word).toBe('stop');
    expect(facts(printed('2027-12-31')).word).toBe('use');
  });

  it('stops a hardener opened longer ago than its default, for a client', () => {
    const verdict = judge({
      ...input({ container: { opened: { on: day('2026-06-01'), sureness: 'known' } } }),
      policy: defaultPolicy('resin-b'),
    });
    expect(verdict).toMatchObject({ word: 'stop', governing: { basis: 'opened-life', lastGoodDay: '2026-12-01' } });
  });
});

describe('material kinds', () => {
  it('have plain names and are told from other words', () => {
    expect(MATERIAL_KINDS['resin-b']).toBe('Hardener, part B');
    expect([isMaterialKind('pva'), isMaterialKind('toString'), isMaterialKind('')]).toEqual([true, false, false]);
  });
});
