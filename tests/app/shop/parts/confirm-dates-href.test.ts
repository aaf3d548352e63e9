import { describe, expect, it } from 'vitest';
import { confirmDatesHref } from '@/app/(shop)/_parts/stock/confirm-dates-href';
import { judge } from '@/shared/shelf-life/judge';
import { input, printed } from '@/tests/shared/shelf-life/fixtures';

describe('the way to confirm a date', () => {
  const hrefOf = (confirmed: boolean) =>
    confirmDatesHref(judge(input({ lot: { bestBefore: printed('2027-12-31', 'day', confirmed) } })).reasons, 7);

  it('leads to the dates of the lot, and is there only while one waits', () => {
    expect(hrefOf(false)).toBe('/lots/7#dates');
    expect(hrefOf(true)).toBeUndefined();
  });
});
