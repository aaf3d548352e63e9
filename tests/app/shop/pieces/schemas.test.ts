import { describe, expect, it } from 'vitest';
import { citesOfWord } from '@/app/(shop)/pieces/cites-of-word';
import { readingSchema } from '@/app/(shop)/pieces/reading-schema';
import { sayCites } from '@/app/(shop)/pieces/say-cites';
import { warpSchema } from '@/app/(shop)/pieces/schema';
import { unwrap } from '@/shared/result/result';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';
import { citesNote } from '@/shared/wood/cites-note';
import { TYPING } from '../arrive/card-of-a-test';

const LABEL = unwrap(mintOwnLabel('slab', 41)).code;
const ROW = { moisture: '11,4 %', along: '', across: '', depth: '', spot: 'mid-length ' };
const READING = {
  label: LABEL,
  takenOn: '1 Nov 2026',
  kind: 'pin',
  meter: ' Tall one ',
  speciesSetting: ' walnut ',
  woodTemperature: '',
  correctsItself: false,
  readings: [ROW],
};

describe('moisture readings as typed', () => {
  const problems = (more: object) =>
    Object.fromEntries(
      (readingSchema(TYPING).safeParse({ ...READING, ...more }).error?.issues ?? []).map(({ path, message }) => [
        path.join('.'),
        message,
      ]),
    );
  it('are read once, in tenths and nanometres, by the same rule as wood that arrives', () => {
    const rows = [ROW, { ...ROW, along: '600 mm', across: '120 mm right', depth: '20 mm' }];
    const read = readingSchema(TYPING).parse({ ...READING, woodTemperature: '10 °C', readings: rows });
    expect(read).toMatchObject({
      meterKind: 'pin',
      meter: 'Pin meter, Tall one',
      speciesSetting: 'walnut',
      woodTenthsC: 100,
    });
    expect(read.readings).toEqual([
      { mcTenths: 114, alongNm: null, acrossNm: null, depthNm: null, spot: 'mid-length' },
      { mcTenths: 114, alongNm: 600_000_000, acrossNm: -120_000_000, depthNm: 20_000_000, spot: 'mid-length' },
    ]);
  });
  it('need one number: a row left empty beside another was not taken', () => {
    const empty = { ...ROW, moisture: ' ', along: '600 mm' };
    expect(readingSchema(TYPING).parse({ ...READING, readings: [empty, ROW, empty] }).readings).toHaveLength(1);
    expect(problems({ readings: [empty, empty] })).toEqual({
      'readings.0.moisture': expect.stringContaining('Type what the meter shows'),
    });
  });
  it('say what is wrong beside the very field of the very row', () => {
    const says = (moisture: string) => problems({ readings: [ROW, { ...ROW, moisture }] })['readings.1.moisture'];
    expect(says('8.45')).toBe('One decimal is enough, for example 11.4.');
    expect(says('900')).toContain('250 %');
    expect(says('dry')).toContain('does not read');
    expect(Object.keys(problems({ readings: [{ ...ROW, along: 'x', across: 'y', depth: '-1' }] })).sort()).toEqual([
      'readings.0.across',
      'readings.0.along',
      'readings.0.depth',
    ]);
    expect(problems({ takenOn: '', woodTemperature: 'warm' })).toEqual({
      takenOn: expect.any(String),
      woodTemperature: expect.any(String),
    });
  });
});

describe('cup, bow and twist as typed', () => {
  it('are lengths, and empty where nobody measured; none at all is a measure', () => {
    const typed = { label: LABEL, cup: '4 mm', bow: '', twist: '0' };
    expect(warpSchema(TYPING).parse(typed)).toEqual({ label: LABEL, cupNm: 4_000_000, bowNm: null, twistNm: 0 });
    expect(warpSchema(TYPING).safeParse({ ...typed, bow: 'some' }).error?.issues[0]?.path).toEqual(['bow']);
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

  it('is only a possibility where the word is no whole name of it', () => {
    expect(citesOfWord('Walnut from the fair', 'day-first')).toEqual([
      expect.stringMatching(/^Only if it is .+: Listed by CITES: Handroanthus in Appendix II/),
    ]);
    expect(citesOfWord('Ipe', 'day-first')).toEqual([expect.stringMatching(/^Listed by CITES: Handroanthus/)]);
    expect(citesOfWord('Black walnut', 'day-first')).toEqual([]);
  });
});
