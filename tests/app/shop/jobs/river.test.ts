import { describe, expect, it } from 'vitest';
import { readAskedPour } from '@/app/(shop)/jobs/_parts/asked-pour';
import {
  sayBanks,
  sayRiverDepth,
  sayRiverFrom,
  sayRiverHolds,
  sayRiverSize,
} from '@/app/(shop)/jobs/[id]/pours/say-river';
import { pourHref } from '@/app/(shop)/on-hand/fits/pour-href';
import { readRiverQuestion, riverQuestion } from '@/app/(shop)/on-hand/fits/river-question';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';
import { mm } from '@/tests/support/pour-figures';

const TODAY = '2026-11-25' as CalendarDate;
const TYPING = { prefer: 'metric' as const, today: TODAY, order: 'day-first' as const };
const labelOf = (nr: number): string => unwrap(mintOwnLabel('slab', nr)).code;
const [ONE, TWO] = [labelOf(41), labelOf(42)];
const QUERY =
  'make=river&shape=oval&l=1500&w=600&thick=40&gap=80&back=50&species=Elm&mc=10&by=1 Jan 2020&free=yes&job=3';

describe('the address of a pour', () => {
  it('carries what decides where the river runs, its slabs and nothing else', () => {
    const href = pourHref(QUERY, { of: 'river', labels: [ONE, TWO], marks: [] });
    const [path, query] = href.split('?');
    expect(path).toBe('/jobs/pour-for');
    const params = Object.fromEntries(new URLSearchParams(query));
    expect(Object.keys(params).sort()).toEqual(['back', 'gap', 'l', 'make', 'pieces', 'shape', 'thick', 'w']);
    const asked = readAskedPour(params);
    expect(asked.labels).toEqual([ONE, TWO]);
    // A day to be dry by that has passed since has nothing to do with where the river runs.
    expect(readRiverQuestion(asked.asked, TYPING)).toMatchObject({
      request: { shape: { kind: 'oval', length: mm(1500), width: mm(600) } },
      river: { least: mm(80), leastWood: mm(50), thickness: mm(40) },
    });
    expect(pourHref(QUERY, { of: 'river', labels: [ONE], marks: [] }, 3)).toMatch(/^\/jobs\/3\/pours\/new\?/);
  });

  it('names fills without a question, and only marks of the first piece', () => {
    const [, query] = pourHref('l=1500&make=one', { of: 'fills', labels: [ONE], marks: [4, 7] }).split('?');
    const asked = readAskedPour(Object.fromEntries(new URLSearchParams(query)));
    expect(asked).toEqual({ labels: [ONE], wanted: [`${ONE}/mark/4`, `${ONE}/mark/7`], asked: '' });
  });

  it('is read with care: no label of ours, too many of them, no river', () => {
    expect(readAskedPour({}).labels).toEqual([]);
    expect(readAskedPour({ pieces: 'S-NONSENSE <b>', make: 'river' })).toEqual({
      labels: [],
      wanted: undefined,
      asked: '',
    });
    expect(readAskedPour({ pieces: [ONE, `${TWO} ${ONE}`, ONE] }).labels).toEqual([ONE, TWO]);
    expect(riverQuestion({ make: 'one', l: '1500' })).toBe('');
    expect(readRiverQuestion('', TYPING)).toBeUndefined();
    expect(readRiverQuestion('make=river&l=long&w=600&thick=40', TYPING)).toBeUndefined();
    expect(readRiverQuestion('make=river&l=1500&w=600', TYPING)).toBeUndefined();
  });
});

describe('a river in words', () => {
  const river = {
    labels: [ONE, TWO],
    asked: '',
    searchedOn: '2026-11-20' as CalendarDate,
    area: 120_000,
    banks: [1505, 1490] as [number, number],
    narrowest: mm(79.6),
    widest: mm(130.2),
    finished: mm(40),
    thickest: mm(58),
    top: [],
    woods: [],
  };
  const say = { units: 'metric' as const, order: 'day-first' as const, today: TODAY };

  it('says where it is from, how wide, how much and how deep', () => {
    expect(sayRiverFrom(river, say)).toMatch(/^River between S-\w+ and S-\w+, searched on 20 Nov\.$/);
    expect(sayRiverFrom({ ...river, labels: [ONE] }, say)).toMatch(/^River in S-\w+, sawn down its length, searched/);
    expect(sayRiverSize(river, say)).toBe('79 mm to 131 mm wide, 1,200 cm² by both outlines.');
    expect(sayRiverHolds(river, 'metric')).toBe(
      '4.8 L at the finished 40 mm, before leakage and what stays in the buckets.',
    );
    expect(sayBanks(river, 'metric')).toBe('Banks of 1,505 mm and 1,490 mm, as deep as the river.');
    expect([40, 58, 50].map((deep) => sayRiverDepth(mm(deep), river, 'metric'))).toEqual([
      '40 mm, the finished thickness',
      '58 mm, the thicker slab as it was measured',
      '50 mm, as typed',
    ]);
  });
});
