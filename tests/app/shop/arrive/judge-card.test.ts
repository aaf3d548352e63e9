import { describe, expect, it } from 'vitest';
import { confirmDates, typedDate } from '@/app/(shop)/arrive/card';
import { judgeCard } from '@/app/(shop)/arrive/judge-card';
import { arrivalReasons, sayArrival } from '@/app/(shop)/arrive/say-arrival';
import { cardOf, day, PRODUCT, SHOP, TODAY } from './card-of-a-test';

const ABOUT = { today: TODAY, order: 'day-first', materialKind: 'resin-a', prefer: 'imperial' } as const;

const said = (card: ReturnType<typeof cardOf>) => {
  const verdict = judgeCard(card, SHOP);
  return [verdict.word, ...sayArrival(verdict, ABOUT)];
};

describe('how it arrives, said before anything is written', () => {
  it('is good once a person has confirmed what the label was read as', () => {
    const card = cardOf('(10)K26-114(17)270110');
    expect(said(card)[0]).toBe('care');
    expect(said(confirmDates(card))).toEqual(['use', 'Good to 10 Jan 2027.']);
  });

  it('says at once when it arrived too old, and by how much', () => {
    expect(said(cardOf('(17)261020'))).toEqual([
      'stop',
      'It was good to 20 Oct.',
      'It arrives 36 days too late for a client’s piece.',
    ]);
  });

  it('is good on its last day and too late the day after', () => {
    expect(said(confirmDates(cardOf('(17)261125')))[0]).toBe('care');
    expect(said(confirmDates(cardOf('(17)261124')))[0]).toBe('stop');
  });

  it('calls no date unknown, never good', () => {
    expect(said(cardOf())).toEqual([
      'stop',
      'Its date is unknown.',
      'Unknown is never good: it needs an inspection before it goes in a client job.',
    ]);
  });

  it('takes the dates of a lot the book has before those of the label, and its hold', () => {
    const facts = {
      id: '3',
      code: 'K26-114',
      hold: 'recalled' as const,
      useBy: { date: day('2027-05-01'), precision: 'day' as const, confirmed: true },
    };
    const product = { ...PRODUCT, lots: [{ lotId: 3, code: 'K26-114', facts, inspections: [], heldBecause: '' }] };
    const verdict = judgeCard(cardOf('(10)K26-114(17)270110', { product }), SHOP);
    expect(verdict.word).toBe('stop');
    expect(verdict.reasons[0]).toMatchObject({ code: 'recalled', scope: 'lot' });
    expect(verdict.governing?.lastGoodDay).toBe('2027-05-01');
  });

  it('names the lot that is held and why, and what to do at the door', () => {
    const dates = { useBy: { date: day('2027-05-01'), precision: 'day' as const, confirmed: true } };
    const at = (hold: 'free' | 'on-hold' | 'recalled', heldBecause: string) => {
      const facts = { id: '3', code: 'K26-114', hold, ...dates };
      const product = { ...PRODUCT, lots: [{ lotId: 3, code: 'K26-114', facts, inspections: [], heldBecause }] };
      const verdict = judgeCard(cardOf('(10)K26-114', { product }), SHOP);
      const about = { ...ABOUT, lot: { code: 'K26-114', hold, because: heldBecause } };
      return { said: sayArrival(verdict, about), toDo: arrivalReasons(verdict, about)[0]?.toDo };
    };
    expect(at('on-hold', 'Stays soft.')).toEqual({
      said: [
        'Lot K26-114 is on hold: Stays soft.',
        'Put it apart. Nothing of it goes into a job until the lot is released.',
      ],
      toDo: undefined,
    });
    expect(at('recalled', '').said).toEqual([
      'Lot K26-114 is recalled.',
      'Do not use it. Put it apart and follow the recall.',
    ]);
    expect(at('free', '').said).toEqual(['Good to 1 May 2027.']);
  });

  it('counts a guessed opening and what is seen in it', () => {
    const card = confirmDates(
      cardOf('(17)280110', { openedOn: '1 Sep 2026', sureness: 'guessed', conditions: ['crystals'] }),
    );
    const verdict = judgeCard(card, SHOP);
    expect(verdict.governing?.lastGoodDay).toBe('2027-03-01');
    const crystals = (materialKind: string) =>
      arrivalReasons(verdict, { ...ABOUT, materialKind }).find(
        ({ sentence }) => sentence === 'Crystals were seen in it.',
      );
    expect(crystals('resin-a')?.toDo).toContain('122 to 140 °F');
    expect(crystals('hardwax-oil')?.toDo).toMatch(/^Never warm it over a flame/);
  });

  it('takes what does not read yet as not there', () => {
    const card = cardOf();
    expect(judgeCard({ ...card, dates: { ...card.dates, useBy: typedDate('12/') } }, SHOP).reasons[0]?.code).toBe(
      'date-unknown',
    );
    // 3/4/2027 can be two days, so neither is taken.
    expect(judgeCard({ ...card, dates: { ...card.dates, useBy: typedDate('3/4/2027') } }, SHOP).reasons[0]?.code).toBe(
      'date-unknown',
    );
  });
});
