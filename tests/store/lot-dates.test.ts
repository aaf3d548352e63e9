import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { correctLotDates } from '@/app/_server/stock/correct-lot-dates';
import type { LotDatesInput } from '@/app/_server/stock/lot-dates';
import { openContainer } from '@/app/_server/stock/open-container';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import type { Precision } from '@/shared/calendar/precision';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

describe('the dates of a lot', () => {
  let test: TestBook;
  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(() => test.remove());

  const printed = (date: string, confirmed = true, precision: Precision = 'day') => ({
    date: day(date),
    precision,
    confirmed,
  });
  let nr = 0;
  const delivered = (dates: LotDatesInput) => {
    nr += 1;
    return stocked(test.book, { product: { name: `Resin ${nr}` }, lotCode: 'L-1', dates });
  };
  const again = (productId: number, dates: LotDatesInput, more: object = {}) =>
    receiveContainers(test.book, by(), {
      productId,
      lotCode: 'L-1',
      dates,
      count: 1,
      size: 2_500_000,
      receivedOn: TODAY,
      ...more,
    });
  const row = (stockId: number) => test.book.read.lot.findUniqueOrThrow({ where: { stockId } });

  it('are confirmed by a later delivery on which a person looked at them', async () => {
    const { productId, lotId } = await delivered({ bestBefore: printed('2027-01-10', false) });
    expect((await row(lotId)).bestConfirmed).toBe(false);
    must(await again(productId, { bestBefore: printed('2027-01-10') }));
    expect(await row(lotId)).toMatchObject({ bestBefore: '2027-01-10', bestConfirmed: true });
    must(await again(productId, { bestBefore: printed('2027-01-10', false) }));
    expect((await row(lotId)).bestConfirmed).toBe(true);
  });

  // A limit printed as month and year is its last day: GS1 General Specifications, day 00 of AI (15) and (17).
  it('are the same where they mean the same day, a limit by its last and a day of making by its first', async () => {
    const { productId, lotId } = await delivered({
      bestBefore: printed('2027-02-01', false, 'month'),
      madeOn: printed('2026-02-20', true, 'month'),
    });
    must(await again(productId, { bestBefore: printed('2027-02-28'), madeOn: printed('2026-02-01') }));
    must(await again(productId, { bestBefore: printed('2027-02-14', true, 'month') }));
    expect(await row(lotId)).toMatchObject({ bestBefore: '2027-02-01', bestPrecision: 'month', bestConfirmed: true });
    expect(refusedWith(await again(productId, { bestBefore: printed('2027-02-01') }))).toBe('lot-dates-differ');
    expect(refusedWith(await again(productId, { madeOn: printed('2026-02-20') }))).toBe('lot-dates-differ');
  });

  it('may not say that it was made after one of it was opened, and the container is named', async () => {
    const { lotId, productId, labels } = await delivered({ bestBefore: printed('2027-01-10') });
    const label = labels[0] ?? '';
    must(await openContainer(test.book, by(), { label, opened: { on: day('2026-06-01'), sureness: 'known' } }));
    const made = (date: string, precision?: Precision) => ({
      madeOn: printed(date, true, precision),
      bestBefore: printed('2027-01-10'),
    });
    const result = await correctLotDates(test.book, by(), { lotId, dates: made('2026-06-02'), why: '' });
    if (result.ok) throw new Error('It was not refused.');
    expect(result.error).toMatchObject({ code: 'opened-before-made', field: 'madeOn', facts: { label } });
    expect(sayRefusal(result.error).what).toMatch(/^C-\w{6} is known to have been opened on 1 Jun 2026: /);
    expect(refusedWith(await again(productId, made('2026-06-02')))).toBe('opened-before-made');
    must(await correctLotDates(test.book, by(), { lotId, dates: made('2026-06-20', 'month'), why: '' }));
    must(await correctLotDates(test.book, by(), { lotId, dates: made('2026-06-01'), why: '' }));
  });

  it('a guessed opened day does not stand against them', async () => {
    const { lotId, labels } = await delivered({});
    const opened = { on: day('2026-06-01'), sureness: 'guessed' as const };
    must(await openContainer(test.book, by(), { label: labels[0] ?? '', opened }));
    must(await correctLotDates(test.book, by(), { lotId, dates: { madeOn: printed('2026-06-02') }, why: '' }));
  });

  it('of an arrival that was reversed do not stand against the right ones', async () => {
    const { productId, lotId, entryId } = await delivered({
      madeOn: printed('2026-01-10'),
      bestBefore: printed('2028-01-10'),
    });
    const right = { bestBefore: printed('2027-01-10') };
    expect(refusedWith(await again(productId, right))).toBe('lot-dates-differ');
    must(await reverseEntry(test.book, by(), { entryId, why: 'Read the year wrong' }));
    const received = must(await again(productId, right));
    expect(received.lotId).toBe(lotId);
    expect(await row(lotId)).toMatchObject({ madeOn: null, bestBefore: '2027-01-10', bestConfirmed: true });
    expect(refusedWith(await again(productId, { bestBefore: printed('2027-01-11') }))).toBe('lot-dates-differ');
  });

  it('stand while one arrival of the lot does', async () => {
    const { productId, entryId } = await delivered({ bestBefore: printed('2028-01-10') });
    must(await again(productId, { bestBefore: printed('2028-01-10') }));
    must(await reverseEntry(test.book, by(), { entryId, why: 'Counted twice' }));
    expect(refusedWith(await again(productId, { bestBefore: printed('2027-01-10') }))).toBe('lot-dates-differ');
  });
});
