import { describe, expect, it } from 'vitest';
import type { WalkThing } from '@/app/_server/stocktake/walk-of';
import { sayChoice, sayDelta, sayProgress, sayThing } from '@/app/(shop)/stocktake/say-walk';
import { choicesOf } from '@/shared/stocktake/choices-of';
import type { WalkStatus } from '@/shared/stocktake/compare-walk';

const thing = (status: WalkStatus, more: Partial<WalkThing> = {}): WalkThing => ({
  stockId: 3,
  label: 'C4V9TN3',
  kind: 'container',
  name: 'Deep-pour resin, part A',
  unit: 'mg',
  quantity: 2_500_000,
  size: 2_500_000,
  tareMg: 180_000,
  densityGramsPerLitre: 1100,
  opened: true,
  place: 'Cabinet 1',
  ownerJob: null,
  changedById: 4,
  changedAt: 0,
  changedBy: 'Ben',
  seen: { at: 1, by: 'Ada', counted: null, grossMg: null },
  status,
  delta: 0,
  choices: [],
  ...more,
});
const says = (...given: Parameters<typeof thing>) => sayThing(thing(...given), 'metric');

describe('what a walk says of a thing', () => {
  it('is a mark, a few words, and a sentence, each its own', () => {
    expect(says('here')).toEqual({ word: 'use', says: 'here', why: 'As the book has it. Seen by Ada.' });
    expect(says('missing', { seen: null })).toEqual({
      word: 'stop',
      says: 'not seen',
      why: '2.5 kg by the book, in Cabinet 1.',
    });
    const counted = { at: 1, by: 'Ada', counted: 2_100_000, grossMg: null };
    expect(says('different', { seen: counted, delta: -400_000 })).toEqual({
      word: 'care',
      says: '400 g less',
      why: '2.1 kg in it; the book has 2.5 kg. Seen by Ada.',
    });
    expect(says('extra', { place: null }).says).toBe('in no place');
    expect(says('extra', { place: 'Barn' }).says).toBe('stands in Barn');
    expect(says('back', { quantity: 0 }).why).toMatch(/^The book has written it off\. Weigh/);
    expect(says('back', { kind: 'piece', unit: 'piece', quantity: 0 }).why).toMatch(/Reverse that entry/);
  });

  it('names who changed it since it was seen, or since the walk began', () => {
    expect(says('changed').why).toMatch(/^Ben wrote something of it after it was seen\./);
    expect(says('changed', { seen: null }).why).toMatch(/^Ben moved or used it after this walk began\./);
  });

  it('names the job a missing slab is promised to', () => {
    const slab = { kind: 'piece' as const, unit: 'piece' as const, quantity: 1, seen: null };
    expect(says('missing', { ...slab, ownerJob: { id: 1, name: 'River desk' } }).why).toBe(
      'On hand by the book, in Cabinet 1. It is promised to River desk.',
    );
  });

  it('says what each choice will do', () => {
    const all = (['missing', 'different', 'extra', 'back', 'changed'] as const).flatMap((status) => {
      const one = thing(status, { delta: status === 'missing' ? 0 : -150_000 });
      return choicesOf(one).map((choice) => sayChoice(choice, one, 'metric'));
    });
    expect(new Set(all)).toEqual(new Set(['Leave it', 'Write it off', 'Write 150 g less', 'Move it here, 150 g less']));
    expect(sayChoice('correct', thing('back', { delta: 300 }), 'metric')).toBe('Put it back, here');
    expect(sayDelta(3, 'piece', 'metric')).toBe('3 pieces more');
  });

  it('counts what was seen of what was expected, and what is to be looked into', () => {
    const all = [thing('here'), thing('missing'), thing('different'), thing('extra'), thing('changed')];
    expect(sayProgress(all)).toBe('2 of 3 seen, 3 to look into');
    expect(sayProgress([thing('here')])).toBe('1 of 1 seen');
    expect(sayProgress([])).toBe('0 of 0 seen');
  });
});
