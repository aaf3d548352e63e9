import { describe, expect, it } from 'vitest';
import { firstChoice, firstFormat, readChoice } from '@/app/_ui/labels/label-choice';
import { LABEL_FORMATS } from '@/shared/labels/label-formats';

describe('how labels are printed to begin with', () => {
  it('is on the paper that is sold where the units are used', () => {
    expect(firstChoice('imperial').format).toBe('letter-3x10');
    expect(firstChoice('metric').format).toBe('a4-3x8');
    expect(readChoice(undefined, 'imperial')).toEqual(firstChoice('imperial'));
    for (const prefer of ['metric', 'imperial'] as const) {
      for (const kind of ['sheet', 'single'] as const) {
        expect(LABEL_FORMATS[firstFormat(kind, prefer)].kind).toBe(kind);
      }
    }
  });

  it('is two for a tin and one for a place, until the shop says otherwise', () => {
    expect(firstChoice('metric')).toMatchObject({ copies: 2, placeCopies: 1 });
    const kept = JSON.stringify({ format: 'a4-2x7', copies: 1, placeCopies: 2 });
    expect(readChoice(kept, 'imperial')).toMatchObject({ format: 'a4-2x7', copies: 1, placeCopies: 2 });
    // What an earlier version kept says nothing of places.
    expect(readChoice(JSON.stringify({ copies: 2 }), 'metric')).toMatchObject({ copies: 2, placeCopies: 1 });
  });
});
