import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hrefOfAsk, readAsk } from '@/app/(shop)/on-hand/ask';

describe('the address of On hand', () => {
  it('keeps the search, the shelf and the switch, and reads them back', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 100 }),
        fc.constantFrom('materials' as const, 'wood' as const),
        fc.boolean(),
        (text, show, withEmpty) => {
          const ask = { query: text.trim(), show, withEmpty };
          const url = new URL(hrefOfAsk(ask), 'http://shop');
          const params = url.searchParams;
          // An address holds whole characters only: half a pair is replaced on the way.
          if (text.isWellFormed())
            expect(readAsk({ q: params.get('q'), show: params.get('show'), used: params.get('used') })).toEqual(ask);
        },
      ),
    );
  });

  it('keeps what wood is narrowed to, on the wood shelf alone', () => {
    const wood = { form: 'board' as const, species: 'European oak', free: true, thick: '8/4', long: '7\' 6"' };
    const ask = { query: '', show: 'wood' as const, withEmpty: false, wood };
    const { searchParams } = new URL(hrefOfAsk(ask), 'http://shop');
    expect(readAsk(Object.fromEntries(searchParams))).toEqual(ask);
    expect(hrefOfAsk({ ...ask, show: 'materials' })).toBe('/on-hand');
    expect(readAsk({ show: 'wood', form: 'plank', thick: ' ' }).wood).toBeUndefined();
  });

  it('takes what does not read for nothing', () => {
    expect(readAsk({ show: 'everything', used: '1', q: ['a', 'b'] })).toEqual({
      query: 'a',
      show: 'materials',
      withEmpty: false,
    });
    expect(readAsk({ q: 'x'.repeat(500) }).query).toHaveLength(100);
  });
});
