import { describe, expect, it } from 'vitest';
import { readId } from '@/app/(shop)/_parts/read-id';
import { thingHref } from '@/app/(shop)/_parts/thing-href';

describe('an address of the book', () => {
  it('takes a number only', () => {
    expect(['12', '0', '-1', '1e3', '12a', '', '99999999999'].map(readId)).toEqual([12, ...Array(6).fill(undefined)]);
  });
  it('goes to the page of what the label is stuck on', () => {
    expect(['C1', 'P1', 'S1', 'B1', 'H1', 'F1'].map(thingHref)).toEqual([
      '/containers/C1',
      '/places/P1',
      '/pieces/S1',
      '/pieces/B1',
      '/pieces/H1',
      '/pieces/F1',
    ]);
  });
});
