import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keepDraft, recallDraft } from '@/app/(shop)/arrive/_ui/kept-draft';
import { sayWhere } from '@/app/(shop)/arrive/_ui/place-choice';
import { sayCard } from '@/app/(shop)/arrive/card';
import { newProduct } from '@/app/(shop)/arrive/new-product';
import { scanOnCard } from '@/app/(shop)/arrive/scan-on-card';
import { isTyped, type WoodDraft } from '@/app/(shop)/arrive/wood/_ui/wood-draft';
import type { TypedWood } from '@/app/(shop)/arrive/wood/schema';
import { cardOf } from './card-of-a-test';

function storageOf(entries: Map<string, string>): Pick<Storage, 'getItem' | 'setItem' | 'removeItem'> {
  return {
    getItem: (key) => entries.get(key) ?? null,
    setItem: (key, value) => void entries.set(key, value),
    removeItem: (key) => void entries.delete(key),
  };
}

describe('a draft that is kept in the tab', () => {
  beforeEach(() => vi.stubGlobal('sessionStorage', storageOf(new Map())));
  afterEach(() => vi.unstubAllGlobals());

  it('comes back as it was left, and goes when it is booked', () => {
    const card = cardOf('(10)K26-114', { count: '3', isOpened: true, openedOn: 'Sep 2026' });
    keepDraft('arrive-card', 1, { card });
    expect(recallDraft('arrive-card', 1)).toEqual({ card });
    keepDraft('arrive-card', 1, undefined);
    expect(recallDraft('arrive-card', 1)).toBeUndefined();
  });

  it('is let go where its shape is another by now, or does not read', () => {
    keepDraft('arrive-card', 1, { card: cardOf() });
    expect(recallDraft('arrive-card', 2)).toBeUndefined();
    sessionStorage.setItem('flitchbook.arrive-card', '{half');
    expect(recallDraft('arrive-card', 1)).toBeUndefined();
  });

  it('is nothing where the browser refuses storage', () => {
    vi.stubGlobal('sessionStorage', {
      getItem: () => {
        throw new Error('refused');
      },
      setItem: () => {
        throw new Error('full');
      },
    });
    expect(() => keepDraft('arrive-card', 1, { card: cardOf() })).not.toThrow();
    expect(recallDraft('arrive-card', 1)).toBeUndefined();
  });

  it('is named by product and lot', () => {
    expect(sayCard(cardOf('(10)K26-114'))).toBe('Deep-pour resin, part A, lot K26-114');
    expect(sayCard(cardOf())).toBe('Deep-pour resin, part A');
  });
});

describe('a place that is named where something goes', () => {
  const places = [{ label: 'P1234567', name: 'Cabinet 2', inside: null }];

  it('is said as new until it is in the book', () => {
    expect(sayWhere({ placeLabel: '', newPlace: ' cabinet 3 ' }, places)).toBe('cabinet 3 (new)');
    expect(sayWhere({ placeLabel: 'P1234567', newPlace: '' }, places)).toBe('Cabinet 2');
    expect(sayWhere({ placeLabel: '', newPlace: '  ' }, places)).toBeUndefined();
  });

  it('gives way to the label of a place that is scanned', () => {
    const outcome = scanOnCard(
      cardOf('', { newPlace: 'cabinet 3' }),
      {
        kind: 'place',
        label: 'P1234567',
        name: 'Cabinet 2',
      },
      'day-first',
    );
    expect(outcome).toMatchObject({ kind: 'changed', card: { placeLabel: 'P1234567', newPlace: '' } });
  });
});

describe('a product that was looked for first', () => {
  it('is called what it was looked for by', () => {
    expect(newProduct(undefined, undefined, ' Tung oil ').name).toBe('Tung oil');
  });
});

describe('the wood form as it is kept', () => {
  const wood = {
    species: '',
    length: '',
    flags: ['live-edge-left'],
    placeLabel: '',
    meter: '',
  } as unknown as TypedWood;
  const draft = (change: Partial<WoodDraft>): WoodDraft => ({ wood, newPlace: '', hadPhoto: false, ...change });

  it('counts as typed when a person put something in', () => {
    expect(isTyped(draft({ wood: { ...wood, length: '2400 mm' } }), wood)).toBe(true);
    expect(isTyped(draft({ wood: { ...wood, flags: [] } }), wood)).toBe(true);
    expect(isTyped(draft({ newPlace: 'Rack by the door' }), wood)).toBe(true);
    expect(isTyped(draft({ hadPhoto: true }), wood)).toBe(true);
  });

  it('does not count what the device fills in by itself', () => {
    expect(isTyped(draft({}), wood)).toBe(false);
    expect(isTyped(draft({ wood: { ...wood, placeLabel: 'P1234567', meter: 'pin' } }), wood)).toBe(false);
  });
});
