import { describe, expect, it } from 'vitest';
import { acceptOverride } from '@/shared/shelf-life/accept-override';
import { judge } from '@/shared/shelf-life/judge';
import { testPourSince } from '@/shared/shelf-life/test-pour-since';
import type { JudgeInput } from '@/shared/shelf-life/types/verdict';
import { day, input, inspection, printed, TODAY } from '@/tests/shared/shelf-life/fixtures';

const past = { bestBefore: printed('2026-12-12') };
const pour = { madeOn: TODAY, passed: true, note: 'Hard and clear after 24 h' };
const now = { today: TODAY };

describe('override', () => {
  it.each([
    ['past its date', input({ lot: past })],
    ['unknown', input({ lot: { bestBefore: undefined } })],
    ['failed an earlier inspection', input({ inspections: [inspection({ passed: false })] })],
  ])('a Stop because it is %s may be overridden by a reason and a test pour', (_, given) => {
    const verdict = judge(given);
    expect(verdict.override).toEqual({ allowed: true, needs: ['reason', 'test-pour'] });
    expect(acceptOverride(verdict, { reason: ' Same lot poured well last week ', testPour: pour }, now)).toEqual({
      ok: true,
      value: { reason: 'Same lot poured well last week' },
    });
  });

  it.each(['on-hold', 'quarantine', 'recalled'] as const)('%s cannot: it is released first', (hold) => {
    const verdict = judge(input({ lot: { ...past, hold } }));
    expect(verdict.override).toEqual({ allowed: false, because: [hold] });
    expect(acceptOverride(verdict, { reason: 'x', testPour: pour }, now)).toEqual({
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
    expect(acceptOverride(judge(input()), { reason: 'x', testPour: pour }, now)).toMatchObject({
      error: { code: 'not-needed' },
    });
    expect(judge(input({ container: { conditions: ['haze'] } })).override).toBe('not-needed');
  });

  it('needs all of: a reason, a test pour that passed, its photo or its note', () => {
    const verdict = judge(input({ lot: past }));
    const fails = (offered: Parameters<typeof acceptOverride>[1]) => acceptOverride(verdict, offered, now);
    expect(fails({ reason: '  ', testPour: pour })).toMatchObject({ error: { code: 'reason-missing' } });
    expect(fails({ reason: 'x' })).toMatchObject({ error: { code: 'test-pour-missing' } });
    expect(fails({ reason: 'x', testPour: { ...pour, passed: false } })).toMatchObject({
      error: { code: 'test-pour-failed' },
    });
    expect(fails({ reason: 'x', testPour: { ...pour, note: ' ' } })).toMatchObject({
      error: { code: 'test-pour-without-photo-or-note' },
    });
    expect(fails({ reason: 'x', testPour: { ...pour, note: undefined, photoId: 'p1' } }).ok).toBe(true);
  });

  describe('rests on a pour of the material as it is', () => {
    const offered = (given: JudgeInput, madeOn: string) => {
      const facts = { today: TODAY, openedOn: given.container.opened?.on };
      return acceptOverride(judge(given), { reason: 'x', testPour: { ...pour, madeOn: day(madeOn) } }, facts);
    };
    const tooOld = (since: string, because: string) => ({
      ok: false,
      error: { code: 'test-pour-too-old', since: { day: since, because } },
    });

    it('made after the last good day of a limit that has run out', () => {
      const given = input({ lot: { bestBefore: printed('2026-11-12') } });
      expect(offered(given, '2026-11-12')).toEqual(tooOld('2026-11-13', 'past-limit'));
      expect(offered(given, '2026-11-13').ok).toBe(true);
    });

    it('made after the latest of several that have run out', () => {
      const given = input({
        policy: { openedLife: { count: 1, unit: 'month' } },
        lot: { bestBefore: printed('2026-11-20') },
        container: { opened: { on: day('2026-09-01'), sureness: 'known' } },
      });
      expect(offered(given, '2026-11-20')).toEqual(tooOld('2026-11-21', 'past-limit'));
      expect(offered(given, '2026-11-21').ok).toBe(true);
    });

    it('not before the container was opened, where its opened life is what stops it', () => {
      const given = input({
        policy: { openedLife: { count: 1, unit: 'month' } },
        container: { opened: { on: day('2026-11-10'), sureness: 'known' } },
      });
      expect(offered(given, '2026-11-09')).toEqual(tooOld('2026-11-10', 'opened'));
      expect(offered(given, '2026-11-10').ok).toBe(true);
    });

    it('not before an inspection that it failed', () => {
      const given = input({ inspections: [inspection({ passed: false, on: day('2026-11-05') })] });
      expect(offered(given, '2026-11-04')).toEqual(tooOld('2026-11-05', 'failed'));
      expect(offered(given, '2026-11-05').ok).toBe(true);
    });

    it.each([
      ['no date is known', input({ lot: { bestBefore: undefined } })],
      ['the limit is still ahead', input({ lot: past })],
    ])('at most 90 days old where %s (common practice)', (_, given) => {
      expect(offered(given, '2026-08-26')).toEqual(tooOld('2026-08-27', 'age'));
      expect(offered(given, '2026-08-27').ok).toBe(true);
      expect(testPourSince(judge(given), now).day).toBe('2026-08-27');
    });
  });
});
