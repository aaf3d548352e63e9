import { describe, expect, it } from 'vitest';
import { sayCites } from '@/app/(shop)/pieces/say-cites';
import { readingSchema } from '@/app/(shop)/pieces/schema';
import { unwrap } from '@/shared/result/result';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';
import { citesNote } from '@/shared/wood/cites-note';
import { TYPING } from '../arrive/card-of-a-test';

const READING = {
  label: unwrap(mintOwnLabel('slab', 41)).code,
  takenOn: '1 Nov 2026',
  moisture: '11,4 %',
  meter: ' Pin meter ',
  spot: 'mid-length',
};

describe('a moisture reading as typed', () => {
  it('is read once, in tenths, by the same rule as wood that arrives', () => {
    expect(readingSchema(TYPING).parse(READING)).toMatchObject({ mcTenths: 114, meter: 'Pin meter' });
  });
  it('says what is wrong with it beside the field', () => {
    const says = (moisture: string) => {
      const read = readingSchema(TYPING).safeParse({ ...READING, moisture });
      return read.error?.issues.find(({ path }) => path[0] === 'moisture')?.message;
    };
    expect(says('')).toContain('Type what the meter shows');
    expect(says('8.45')).toBe('One decimal is enough, for example 11.4.');
    expect(says('900')).toContain('250 %');
    expect(says('dry')).toContain('does not read');
  });
});

describe('a wood that is listed', () => {
  it('is said with its appendix, its date, and who to ask', () => {
    const note = citesNote('Dalbergia nigra');
    const said = note && sayCites(note, 'day-first');
    expect(said).toContain('Dalbergia nigra in Appendix I');
    expect(said).toContain('from memory');
    expect(said).toContain('CITES authority');
  });
});
