import { describe, expect, it } from 'vitest';
import { acceptOverride } from '@/shared/shelf-life/accept-override';
import { judge } from '@/shared/shelf-life/judge';
import { input, inspection, printed } from '@/tests/shared/shelf-life/fixtures';

const past = { bestBefore: printed('2026-12-12') };
const pour = { passed: true, note: 'Hard and clear after 24 h' };

describe('override', () => {
  it.each([
    ['past its date', input({ lot: past })],
    ['unknown', input({ lot: { bestBefore: undefined } })],
    ['failed an earlier inspection', input({ inspections: [inspection({ passed: false })] })],
  ])('a Stop because it is %s may be overridden by a reason and a test pour', (_, given) => {
    const verdict = judge(given);
    expect(verdict.override).toEqual({ allowed: true, needs: ['reason', 'test-pour'] });
    expect(acceptOverride(verdict, { reason: ' Same lot poured well last week ', testPour: pour })).toEqual({
      ok: true,
      value: { reason: 'Same lot poured well last week' },
    });
  });

  it.each(['on-hold', 'quarantine', 'recalled'] as const)('%s cannot: it is released first', (hold) => {
    const verdict = judge(input({ lot: { ...past, hold } }));
    expect(verdict.override).toEqual({ allowed: false, because: [hold] });
    expect(acceptOverride(verdict, { reason: 'x', testPour: pour })).toEqual({
      ok: false,
      error: { code: 'never', because: [hold] },
    });
  });

  it('names a hold once when both the lot and the container are held', () => {
    expect(judge(input({ lot: { hold: 'on-hold' }, container: { hold: 'on-hold' } })).override).toEqual({
      allowed: false,
      because: ['on-hold'],
    });
  });

  it('spoilt never, a wrong system never', () => {
    const spoilt = judge(input({ policy: { freezingRuins: true }, container: { conditions: ['frozen', 'gelled'] } }));
    expect(spoilt.override).toEqual({ allowed: false, because: ['gelled', 'frozen-ruined'] });
    const wrong = judge(input({}, { pairedWith: { systemId: 's', systemName: 'Deep', part: 'A', label: 'T-02' } }));
    expect(wrong.override).toEqual({ allowed: false, because: ['wrong-system'] });
  });

  it('is not needed for Use or Care', () => {
    expect(acceptOverride(judge(input()), { reason: 'x', testPour: pour })).toMatchObject({
      error: { code: 'not-needed' },
    });
    expect(judge(input({ container: { conditions: ['haze'] } })).override).toBe('not-needed');
  });

  it('needs all of: a reason, a test pour that passed, its photo or its note', () => {
    const verdict = judge(input({ lot: past }));
    const fails = (offered: Parameters<typeof acceptOverride>[1]) => acceptOverride(verdict, offered);
    expect(fails({ reason: '  ', testPour: pour })).toMatchObject({ error: { code: 'reason-missing' } });
    expect(fails({ reason: 'x' })).toMatchObject({ error: { code: 'test-pour-missing' } });
    expect(fails({ reason: 'x', testPour: { ...pour, passed: false } })).toMatchObject({
      error: { code: 'test-pour-failed' },
    });
    expect(fails({ reason: 'x', testPour: { passed: true, note: ' ' } })).toMatchObject({
      error: { code: 'test-pour-without-photo-or-note' },
    });
    expect(fails({ reason: 'x', testPour: { passed: true, photoId: 'p1' } }).ok).toBe(true);
  });
});
