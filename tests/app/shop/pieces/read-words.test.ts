import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figuredPiece, newestReadings } from '@/app/(shop)/pieces/figured-piece';
import { readRoom } from '@/app/(shop)/pieces/read-room';
import { readSpot } from '@/app/(shop)/pieces/read-spot';
import { meterKindOf, meterWords } from '@/shared/wood/meter-words';
import { METER_KINDS } from '@/shared/wood/moisture-reading';
import { readingOfATest } from '../../../support/piece-line-of-a-test';
import { day, mm, slab } from './piece-of-a-test';

describe('the kind of a meter from the words written for it', () => {
  it('is what they say, and unknown where they say nothing', () => {
    expect(
      ['Pin meter, insulated pins', 'Pinless, set to oak', 'pin-less', 'Oven test', 'The blue one', ''].map(
        meterKindOf,
      ),
    ).toEqual(['pin', 'pinless', 'pinless', 'oven', 'unknown', 'unknown']);
  });
  it('reads back from the words that are written for it, whatever the meter is called', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...METER_KINDS),
        fc.oneof(fc.string({ maxLength: 30 }), fc.constantFrom('Pin meter, old', 'pinless X', 'oven', 'The blue one')),
        (kind, name) => {
          expect(meterKindOf(meterWords(kind, name))).toBe(kind);
        },
      ),
    );
  });
  it('keeps a name, and changes the kind before it', () => {
    expect(meterWords('pin', 'The blue one')).toBe('Pin meter, The blue one');
    expect(meterWords('pinless', 'Pin meter, The blue one')).toBe('Pinless meter, The blue one');
    expect(meterWords('pin', 'Pin meter, insulated pins')).toBe('Pin meter, insulated pins');
    expect(meterWords('pinless', 'Pin meter, insulated pins')).toBe('Pinless meter');
    expect(meterWords('unknown', 'Pin meter, The blue one')).toBe('The blue one');
  });
});

describe('where on a piece a reading was taken', () => {
  const read = (spot: string) => readSpot(spot, mm(3000), 'metric');
  it('is read where the words can be counted', () => {
    expect(read('mid-face, 300 mm from the end')).toEqual({ along: mm(300) });
    expect(read('12 in from end')).toEqual({ along: mm(304.8) });
    expect(read('face 2, 300 mm from the end')).toEqual({ along: mm(300) });
    expect(read('5\' 6 1/2" from one end')).toEqual({ along: mm(1689.1) });
    expect(read('mid-length, 20 mm deep')).toEqual({ along: mm(1500), depth: mm(20) });
    expect(readSpot('6 from the end', mm(3000), 'imperial')).toEqual({ along: mm(152.4) });
  });
  it('is left out where they cannot, and where it lies beyond the piece', () => {
    for (const spot of ['', 'mid-face', 'by the knot', 'some way from the end', '4000 mm from the end']) {
      expect(read(spot), spot).toEqual({});
    }
  });
  it('never throws', () => {
    fc.assert(fc.property(fc.string({ maxLength: 120 }), (spot) => typeof read(spot) === 'object'));
  });
});

describe('a piece as the book has it', () => {
  const line = {
    form: 'slab' as const,
    species: 'Walnut',
    lengthNm: mm(3000),
    widthStartNm: mm(700),
    widthMiddleNm: mm(650),
    widthEndNm: mm(720),
    thicknessNm: mm(58),
    place: null,
    placeLabel: null,
    readings: [
      readingOfATest({ takenOn: day('2026-11-20'), mcTenths: 312, meter: 'Pin meter', spot: '100 mm from the end' }),
      readingOfATest({ takenOn: day('2026-11-20'), mcTenths: 104, meter: 'Pinless', spot: 'mid-length' }),
      readingOfATest({ takenOn: day('2026-10-01'), mcTenths: 400, meter: '', spot: '' }),
    ],
  };
  it('is warned of: too few, near an end, above what pins can say, the middle not read, meters that differ', () => {
    const summary = newestReadings(figuredPiece(line, 'metric'));
    expect(summary?.wettest.rawTenths).toBe(312);
    expect(summary?.cautions.map(({ code }) => code).sort()).toEqual([
      'above-the-meter',
      'core-not-read',
      'meters-differ',
      'near-the-end',
      'too-few',
    ]);
  });
  it('has no summary without readings', () => {
    expect(newestReadings(slab())).toBeNull();
  });
});

describe('the air of a room', () => {
  it('settles wood at the handbook’s figure', () => {
    // Wood Handbook FPL-GTR-190 (2010), Table 4-2: 70 °F and 50 % is 9.2 %.
    expect(readRoom({ temperature: '70', humidity: '50' }, 'imperial').emc?.value.mc).toBeCloseTo(9.2, 1);
    expect(readRoom({ temperature: '70 °F', humidity: '50 %' }, 'metric').emc?.value.mc).toBeCloseTo(9.2, 1);
  });
  it('says nothing of an empty field, and settles nothing', () => {
    expect(readRoom({ temperature: '', humidity: '' }, 'metric')).toEqual({ problems: {} });
    expect(readRoom({ temperature: '20', humidity: '' }, 'metric').emc).toBeUndefined();
    expect(readRoom({ temperature: '', humidity: '40' }, 'metric').emc).toBeUndefined();
  });
  it('says what is wrong with a field that does not read, or that no room can have', () => {
    expect(readRoom({ temperature: 'warm', humidity: '45' }, 'metric').problems.temperature).toContain('20 °C');
    expect(readRoom({ temperature: '250', humidity: '45' }, 'metric').problems.temperature).toContain('20 °C');
    for (const humidity of ['100', '-3', 'damp', '4 5', '45.55']) {
      const { emc, problems } = readRoom({ temperature: '20', humidity }, 'metric');
      expect([emc, typeof problems.humidity]).toEqual([undefined, 'string']);
    }
  });
});
