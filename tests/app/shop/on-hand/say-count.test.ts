import { describe, expect, it } from 'vitest';
import { sayCount, sayThings, sayTotal, sayWhatElse } from '@/app/(shop)/on-hand/say-count';

describe('how many there are, in words', () => {
  const all = { query: '', show: 'materials' as const };

  it.each([
    [{ total: 1, more: false, cut: false }, all, '1 container'],
    [{ total: 134, more: false, cut: false }, all, '134 containers'],
    [{ total: 1, more: false, cut: false }, { query: ' elm ', show: 'wood' as const }, '1 piece for “elm”'],
    [{ total: 500, more: true, cut: false }, all, 'More than 500 containers'],
    [{ total: 500, more: false, cut: false }, all, '500 containers'],
    [{ total: 0, more: false, cut: true }, all, ''],
    [{ total: null, more: false, cut: false }, all, ''],
  ])('says a count that stopped as "more than": %o', (counted, ask, said) => {
    expect(sayCount(counted, ask)).toBe(said);
  });

  it('asks for more letters where the search fits more than was looked through', () => {
    const ask = { query: 'c2', show: 'materials' as const };
    expect(sayCount({ total: 281, more: false, cut: true }, ask)).toBe(
      '281 containers for “c2”, and maybe others: type more letters.',
    );
    expect(sayCount({ total: 500, more: true, cut: true }, ask)).toBe(
      'More than 500 containers for “c2”: type more letters.',
    );
  });

  it('says the same of how many of them are shown', () => {
    expect(sayTotal(1234, false)).toBe('1,234');
    expect(sayTotal(500, true)).toBe('more than 500');
    expect(sayThings(500, true, 'wood')).toBe('more than 500 pieces');
  });
});

describe('what to do where a search shows nothing', () => {
  const none = { elsewhere: 0, elsewhereMore: false, cut: false };

  it('names how many the other shelf has, as far as they were counted', () => {
    expect(sayWhatElse({ ...none, elsewhere: 1 }, 'materials')).toBe('The other shelf has 1 piece for it.');
    expect(sayWhatElse({ ...none, elsewhere: 500, elsewhereMore: true }, 'wood')).toBe(
      'The other shelf has more than 500 containers for it.',
    );
  });

  it('asks for more letters where not all was looked through, and for fewer where it was', () => {
    expect(sayWhatElse({ ...none, cut: true }, 'wood')).toContain('type more letters');
    expect(sayWhatElse(none, 'wood')).toContain('Try fewer letters');
  });
});
