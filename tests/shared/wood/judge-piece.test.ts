import { describe, expect, it } from 'vitest';
import { judgePiece, type PieceFacts, type PieceReason, WETTEST_TENTHS } from '@/shared/wood/judge-piece';
import { PIECE_FLAGS } from '@/shared/wood/piece';
import { sayPieceReason } from '@/shared/wood/say-piece-reason';
import { day } from '@/tests/support/day';

const TODAY = day('2026-11-25');
const sound: PieceFacts = {
  inStock: true,
  hold: 'free',
  flags: ['live-edge-left', 'live-edge-right'],
  readings: [{ takenOn: day('2026-11-20'), mcTenths: 88 }],
  form: 'slab',
};
const judged = (more: Partial<PieceFacts>, jobId?: number) => judgePiece({ ...sound, ...more }, TODAY, jobId);
const codes = (more: Partial<PieceFacts>, jobId?: number) => judged(more, jobId).reasons.map((each) => each.code);
const read = (...readings: [string, number][]) => ({
  readings: readings.map(([takenOn, mcTenths]) => ({ takenOn: day(takenOn), mcTenths })),
});

describe('judging a piece of wood', () => {
  it('is Use, with no reason, where nothing speaks against it; live edges do not', () => {
    expect(judged({})).toEqual({ word: 'use', reasons: [] });
  });

  it.each<[string, Partial<PieceFacts>, PieceReason]>([
    ['gone', { inStock: false }, { code: 'gone', weight: 'stop' }],
    ['on hold', { hold: 'on-hold' }, { code: 'held', weight: 'stop', hold: 'on-hold' }],
    ['in quarantine', { hold: 'quarantine' }, { code: 'held', weight: 'stop', hold: 'quarantine' }],
    ['recalled', { hold: 'recalled' }, { code: 'held', weight: 'stop', hold: 'recalled' }],
    [
      'promised to another job',
      { promisedTo: { id: 4, name: 'Desk' } },
      { code: 'promised-elsewhere', weight: 'stop', job: 'Desk' },
    ],
  ])('is Stop where it is %s', (_, more, reason) => {
    expect(judged(more, 5)).toEqual({ word: 'stop', reasons: [reason] });
  });

  it('is not stopped for the job it is promised to, and is for no job at all', () => {
    const promisedTo = { id: 4, name: 'Desk' };
    expect(judged({ promisedTo }, 4).word).toBe('use');
    expect(judged({ promisedTo }).word).toBe('stop');
  });

  // 10.0 %: common practice for indoor furniture.
  it('asks for care above 10.0 %, not at it', () => {
    expect(WETTEST_TENTHS).toBe(100);
    expect(judged(read(['2026-11-20', 100])).word).toBe('use');
    expect(judged(read(['2026-11-20', 101]))).toEqual({
      word: 'care',
      reasons: [{ code: 'wet', weight: 'care', mcTenths: 101, mostTenths: 100 }],
    });
  });

  it('counts the newest day it was read, and of that day the wettest', () => {
    expect(codes(read(['2026-11-20', 95], ['2026-11-01', 140]))).toEqual([]);
    expect(codes(read(['2026-11-01', 80], ['2026-11-20', 92], ['2026-11-20', 121], ['2026-11-20', 90]))).toEqual([
      'wet',
    ]);
  });

  // 30 days: common practice.
  it('asks to read again after more than 30 days', () => {
    expect(codes(read(['2026-10-26', 90]))).toEqual([]);
    expect(judged(read(['2026-10-25', 90])).reasons).toEqual([{ code: 'reading-old', weight: 'care', days: 31 }]);
  });

  it('asks for a reading where there is none, except of a sheet', () => {
    for (const form of ['slab', 'board', 'offcut']) expect(codes({ form, readings: [] })).toEqual(['no-reading']);
    expect(codes({ form: 'sheet', readings: [] })).toEqual([]);
    expect(codes({ form: 'sheet', ...read(['2026-11-20', 140]) })).toEqual(['wet']);
  });

  it.each(['broken', 'strapped', 'checked', 'twisted'] as const)('asks for care where it is %s', (flag) => {
    expect(judged({ flags: [flag] })).toEqual({ word: 'care', reasons: [{ code: flag, weight: 'care' }] });
  });

  it('gives every reason, those that stop first', () => {
    const verdict = judged(
      {
        inStock: false,
        hold: 'on-hold',
        flags: [...PIECE_FLAGS],
        promisedTo: { id: 4, name: 'Desk' },
        ...read(['2026-09-01', 160]),
      },
      5,
    );
    expect(verdict.word).toBe('stop');
    expect(verdict.reasons.map((each) => each.code)).toEqual([
      'gone',
      'held',
      'promised-elsewhere',
      'wet',
      'reading-old',
      'broken',
      'strapped',
      'checked',
      'twisted',
    ]);
    const weights = verdict.reasons.map((each) => each.weight);
    expect(weights.lastIndexOf('stop')).toBeLessThan(weights.indexOf('care'));
  });

  it('says every reason as a sentence, and what to do wherever something can be done', () => {
    const reasons: PieceReason[] = [
      { code: 'gone', weight: 'stop' },
      ...['on-hold', 'quarantine', 'recalled'].map((hold) => ({
        code: 'held' as const,
        weight: 'stop' as const,
        hold,
      })),
      { code: 'promised-elsewhere', weight: 'stop', job: 'River desk' },
      { code: 'wet', weight: 'care', mcTenths: 114, mostTenths: 100 },
      { code: 'no-reading', weight: 'care' },
      { code: 'reading-old', weight: 'care', days: 31 },
      ...PIECE_FLAGS.map((code) => ({ code, weight: 'care' as const })),
    ];
    const said = reasons.map(sayPieceReason);
    for (const each of said) expect(each.says).toMatch(/^[A-Z].*\.$/);
    expect(new Set(said.slice(0, -2).map((each) => each.says)).size).toBe(said.length - 2);
    expect(said.slice(1, -2).every((each) => each.todo?.endsWith('.'))).toBe(true);
    expect(sayPieceReason({ code: 'wet', weight: 'care', mcTenths: 114, mostTenths: 100 }).says).toBe(
      'Reads 11.4 %, more than 10 %.',
    );
    expect(sayPieceReason({ code: 'promised-elsewhere', weight: 'stop', job: 'River desk' }).says).toContain(
      'River desk',
    );
  });
});
