import { describe, expect, it } from 'vitest';
import { ofAnotherWood } from '@/app/(shop)/arrive/wood/of-another-wood';
import type { TypedWood } from '@/app/(shop)/arrive/wood/schema';

describe('the next piece of a load', () => {
  const first = { species: 'Walnut', flitch: 'Dairy', flitchNumber: '4', origin: 'Ohio' } as TypedWood;

  it('loses the log it was said to be of when it turns out to be another wood', () => {
    expect(ofAnotherWood(first, first, 'White oak')).toMatchObject({ flitch: '', flitchNumber: '', origin: '' });
  });

  it('keeps it while the wood is the same, and keeps what was typed for the new one', () => {
    expect(ofAnotherWood(first, first, ' walnut ')).toMatchObject({ flitch: 'Dairy', flitchNumber: '4' });
    const typed = { ...first, flitch: 'Quarry oak' };
    expect(ofAnotherWood(typed, first, 'White oak')).toMatchObject({ flitch: 'Quarry oak', flitchNumber: '' });
  });

  it('is whatever is typed on a fresh form', () => {
    const fresh = { species: '', flitch: 'Dairy', flitchNumber: '1', origin: '' } as TypedWood;
    expect(ofAnotherWood(fresh, fresh, 'Oak')).toMatchObject({ species: 'Oak', flitch: 'Dairy', flitchNumber: '1' });
  });
});
