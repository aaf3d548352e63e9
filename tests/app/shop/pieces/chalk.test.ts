import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chalkAsTyped,
  inOrder,
  readChalk,
  type TypedStation,
  unfinished,
} from '@/app/(shop)/pieces/[label]/measure/chalk';
import { measureSchema } from '@/app/(shop)/pieces/[label]/measure/schema';
import { nanometres } from '@/shared/units/nanometres';
import { TYPING } from '../arrive/card-of-a-test';

const rows = (...typed: [string, string, string][]): TypedStation[] =>
  typed.map(([at, left, right]) => ({ at, left, right }));
const SLAB = rows(['0', '300', '310'], ['600', '340', '330'], ['1200', '360', '352'], ['', '', '']);

describe('stations as they are typed', () => {
  it('make an outline as soon as two are whole; an empty row is none yet', () => {
    expect(readChalk({ stations: SLAB.slice(0, 1), gaps: [] }, 'metric').outline).toBeUndefined();
    const read = readChalk({ stations: SLAB, gaps: [] }, 'metric');
    expect(read.line.stations).toHaveLength(3);
    expect(read.outline?.ring).toHaveLength(6);
    expect(read.problems).toEqual({});
  });

  it('in feet, inches and fractions are exact', () => {
    const read = readChalk(
      { stations: rows(['0', '12', '11 7/8'], [`8' 3 1/2"`, '13 1/4', '12']), gaps: [] },
      'imperial',
    );
    expect(read.line.stations[1]).toEqual({
      at: nanometres(25_400_000 * 99.5),
      left: nanometres(25_400_000 * 13.25),
      right: nanometres(25_400_000 * 12),
    });
  });

  it('are marked where they are wrong: out of order, crossed, not a number; the rest stays', () => {
    const wrong = (typed: TypedStation[]) => readChalk({ stations: typed, gaps: [] }, 'metric').problems;
    expect(wrong(rows(['0', '300', '310'], ['900', '1', '1'], ['600', '340', '330']))).toMatchObject({
      '2.at': expect.stringContaining('before the one above it'),
    });
    expect(wrong(rows(['0', '300', '310'], ['600', '-400', '330'], ['1200', '1', '1']))).toMatchObject({
      '1.left': expect.stringContaining('left edge lies right'),
    });
    expect(wrong(rows(['0', 'wide', '310'], ['600', '340', '330']))).toHaveProperty(['0.left']);
  });

  it('name the row that was typed, also past rows that are still empty', () => {
    const typed = rows(['0', '300', '310'], ['', '', ''], ['900', '300', '300'], ['600', '300', '300']);
    expect(readChalk({ stations: typed, gaps: [] }, 'metric').problems).toHaveProperty(['3.at']);
  });

  it('point at the value that looks like a slip', () => {
    const typed = rows(['0', '300', '310'], ['600', '34', '33'], ['1200', '360', '352'], ['1800', '350', '340']);
    expect(readChalk({ stations: typed, gaps: [] }, 'metric').doubt).toMatch(/^1\./);
  });

  it('of a gap are read for themselves, and one off the wood is named in its gap', () => {
    const gap = rows(['300', '20', '20'], ['500', '10', '30']);
    expect(readChalk({ stations: SLAB, gaps: [gap] }, 'metric').outline?.holes).toHaveLength(1);
    const off = rows(['300', '20', '20'], ['1500', '10', '30']);
    expect(readChalk({ stations: SLAB, gaps: [[], off] }, 'metric').problems).toHaveProperty(['g1.1.at']);
  });

  it('that were begun ask for what is still empty', () => {
    expect(unfinished({ stations: rows(['0', '', '310'], ['', '', '']), gaps: [] })).toEqual({
      '0.left': 'This one is still empty.',
    });
  });

  it('are put in order by where they lie, in whatever unit, the empty ones last', () => {
    const typed = rows(['2 m', '1', '1'], ['', '', ''], ['600', '1', '1'], ["4'", '1', '1']);
    expect(inOrder(typed, 'metric').map(({ at }) => at)).toEqual(['600', "4'", '2 m', '']);
  });

  it('read back to the same line, metric and imperial', () => {
    const step = fc.integer({ min: 1, max: 64 * 40 });
    const station = fc.tuple(step, step, step);
    fc.assert(
      fc.property(
        fc.array(station, { minLength: 2, maxLength: 8 }),
        fc.constantFrom('metric', 'imperial'),
        (some, prefer) => {
          let at = 0;
          const stations = some.map(([on, left, right]) => {
            at += on;
            const nm = (sixtyFourths: number) => nanometres(sixtyFourths * 396_875);
            return { at: nm(at), left: nm(left), right: nm(right) };
          });
          const typed = chalkAsTyped({ stations, gaps: [] }, prefer as 'metric' | 'imperial');
          expect(readChalk(typed, prefer as 'metric' | 'imperial').line.stations).toEqual(stations);
        },
      ),
    );
  });
});

describe('the form of stations', () => {
  const schema = measureSchema(TYPING);
  const sent = (stations: TypedStation[]) => schema.safeParse({ label: 'S0W35YR', why: '', stations, gaps: [] });

  it('gives the line to the book, or says beside which value it cannot', () => {
    expect(sent(SLAB).data?.chalkLine.stations).toHaveLength(3);
    const refused = sent(rows(['0', '', '310'], ['600', '340', '330']));
    expect(refused.error?.issues.map(({ path }) => path.join('.'))).toContain('0.left');
    expect(sent(rows(['0', '300', '310'])).error?.issues[0]?.message).toMatch(/both ends/);
  });
});
