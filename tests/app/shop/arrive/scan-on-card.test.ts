import { describe, expect, it } from 'vitest';
import { confirmDates, hasUnconfirmed, typedDate } from '@/app/(shop)/arrive/card';
import { scanOnCard } from '@/app/(shop)/arrive/scan-on-card';
import { cardOf, PRODUCT, saysOf, scanOf } from './card-of-a-test';

const changed = (outcome: ReturnType<typeof scanOnCard>) => {
  if (outcome.kind !== 'changed') throw new Error(`Expected a change, got ${JSON.stringify(outcome)}`);
  return outcome.card;
};

describe('a scan while the arrival card is open', () => {
  it('counts one more of the same product with nothing new on its label', () => {
    expect(changed(scanOnCard(cardOf(), scanOf(), 'day-first')).count).toBe('2');
    expect(changed(scanOnCard(cardOf('(10)K26-114'), scanOf('(10)K26-114'), 'day-first')).count).toBe('2');
  });

  it('fills in lot and dates from the second label of the same container without counting it', () => {
    const card = changed(scanOnCard(cardOf(), scanOf('(10)K26-114(17)270110'), 'day-first'));
    expect(card).toMatchObject({ lot: 'K26-114', count: '1' });
    expect(card.dates.useBy).toEqual({ text: '10 Jan 2027', fromCode: true, confirmed: false });
  });

  it('fills in from a label that carries no product, and says when that has nothing new', () => {
    const label = { kind: 'label-without-product', says: saysOf('(10)K26-114(15)270500') } as const;
    const card = changed(scanOnCard(cardOf(), label, 'day-first'));
    expect(card.dates.bestBefore.text).toBe('May 2027');
    expect(scanOnCard(card, label, 'day-first')).toMatchObject({
      kind: 'refused',
      said: 'That label says nothing new.',
    });
  });

  it('refuses another lot, naming both, and leaves the card', () => {
    const outcome = scanOnCard(cardOf('(10)K26-114'), scanOf('(10)K26-115'), 'day-first');
    expect(outcome.kind).toBe('refused');
    expect(outcome).toHaveProperty('said', expect.stringMatching(/K26-115.*K26-114/));
  });

  it('refuses another date for the same lot', () => {
    const outcome = scanOnCard(cardOf('(10)K26-114(17)270110'), scanOf('(10)K26-114(17)270111'), 'day-first');
    expect(outcome).toMatchObject({ kind: 'refused', said: expect.stringContaining('11 Jan 2027') });
  });

  it('never writes over a date that a person typed', () => {
    const card = cardOf('', { lot: 'K26-114' });
    const typed = { ...card, dates: { ...card.dates, useBy: typedDate('3 Mar 2027') } };
    const after = changed(scanOnCard(typed, scanOf('(10)K26-114(17)270110'), 'day-first'));
    expect(after.dates.useBy).toEqual({ text: '3 Mar 2027', fromCode: false, confirmed: true });
  });

  it('counts a container with a serial number once', () => {
    const card = cardOf('(10)K26-114(21)1');
    expect(scanOnCard(card, scanOf('(10)K26-114(21)1'), 'day-first').kind).toBe('refused');
    const two = changed(scanOnCard(card, scanOf('(10)K26-114(21)2'), 'day-first'));
    expect(two.count).toBe('2');
    expect(scanOnCard(two, scanOf('(10)K26-114(21)2'), 'day-first').kind).toBe('refused');
  });

  it('takes a place as where they go', () => {
    const card = changed(scanOnCard(cardOf(), { kind: 'place', label: 'P1234567', name: 'Cabinet 2' }, 'day-first'));
    expect(card.placeLabel).toBe('P1234567');
  });

  it('refuses the same product in another size, since a card holds one size', () => {
    expect(scanOnCard(cardOf(), scanOf('', { ...PRODUCT, packageSize: 5_000_000 }), 'day-first').kind).toBe('refused');
  });

  it('stops at 500 and counts from one where the number is half typed', () => {
    expect(scanOnCard(cardOf('', { count: '500' }), scanOf(), 'day-first').kind).toBe('refused');
    expect(changed(scanOnCard(cardOf('', { count: '' }), scanOf(), 'day-first')).count).toBe('1');
  });

  it('leaves the card for anything else', () => {
    expect(scanOnCard(cardOf(), scanOf('', { ...PRODUCT, productId: 8 }), 'day-first').kind).toBe('other');
    expect(scanOnCard(cardOf(), { kind: 'unknown', code: 'X' }, 'day-first').kind).toBe('other');
    expect(
      scanOnCard(cardOf(), { kind: 'not-in-book', label: 'C1234567', labelKind: 'container' }, 'day-first').kind,
    ).toBe('other');
  });

  it('keeps dates of a code unconfirmed until one press', () => {
    const card = cardOf('(17)270110(11)260110');
    expect(hasUnconfirmed(card)).toBe(true);
    expect(hasUnconfirmed(confirmDates(card))).toBe(false);
    expect(confirmDates(card).dates.bestBefore.confirmed).toBe(false);
  });
});
