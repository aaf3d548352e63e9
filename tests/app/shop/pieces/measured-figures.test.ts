import { describe, expect, it } from 'vitest';
import { compareSeller } from '@/app/(shop)/pieces/compare-seller';
import { faceAndVolume } from '@/app/(shop)/pieces/face-and-volume';
import { figuredPiece } from '@/app/(shop)/pieces/figured-piece';
import { ourFigures } from '@/app/(shop)/pieces/our-figures';
import { readVolume } from '@/app/(shop)/pieces/read-volume';
import { sayDifference, sizeFigures } from '@/app/(shop)/pieces/size-figures';
import { workOutBoardFeet } from '@/app/(shop)/pieces/work-out-board-feet';
import { workOutWeight } from '@/app/(shop)/pieces/work-out-weight';
import { outlineFromStations } from '@/shared/outline/outline-from-stations';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { speciesMeant } from '@/shared/wood/species-meant';
import { pieceLineOfATest, readingOfATest } from '@/tests/support/piece-line-of-a-test';
import { day, mm, wood } from './piece-of-a-test';

const INCH = 25.4;
/** 8 ft long, 12 in at the start and 24 in at the end, 2 in thick: 1728 × 2 in³, 24 board feet. */
const TAPERED = unwrap(
  outlineFromStations({
    stations: [
      { at: mm(0), left: mm(6 * INCH), right: mm(6 * INCH) },
      { at: mm(96 * INCH), left: mm(12 * INCH), right: mm(12 * INCH) },
    ],
  }),
);
const SLAB = pieceLineOfATest({
  species: 'Black walnut',
  lengthNm: mm(96 * INCH),
  widthStartNm: mm(12 * INCH),
  widthMiddleNm: mm(18 * INCH),
  widthEndNm: mm(24 * INCH),
  thicknessNm: mm(2 * INCH),
  shape: { id: 1, source: 'stations', outline: TAPERED, errorNm: null },
  readings: [readingOfATest({ takenOn: day('2026-11-20'), mcTenths: 120 })],
});
const piece = figuredPiece(SLAB, 'imperial');
const measure = workOutBoardFeet(piece, 8);

describe('figures of a measured slab', () => {
  // A trapezium is its length by the mean of its two widths; 144 in³ are a board foot.
  it('are those of its outline: face, volume, true board feet', () => {
    expect(measure.squareMetres.value).toBeCloseTo(96 * 18 * 0.0254 ** 2, 9);
    expect(measure.cubicMetres.value).toBeCloseTo(96 * 18 * 2 * 0.0254 ** 3, 9);
    expect(measure.boardFeet.value).toBeCloseTo(24, 6);
  });

  // NHLA rules, general instructions: lumber that tapers is measured a third of its length in from the narrow end (from
  // memory). 16 in × 8 ft / 12 is 10.67, so SM 11; times 2 in is 22.
  it('by the rule for boards are measured a third in from the narrow end', () => {
    expect(piece.measured?.atThird).toEqual({ width: mm(16 * INCH), along: mm(32 * INCH) });
    expect(measure.sellers?.surface.value).toBe(11);
    expect(measure.sellers?.boardFeet.value).toBe(22);
    expect(sayDifference(measure.sellers?.difference ?? { boardFeet: 0, share: null }, 'slab')).toContain(
      'The rule counts 2.00 less than is there, 8 %',
    );
  });

  it('weigh what the outline’s volume weighs', () => {
    const weight = unwrap(workOutWeight(piece, wood('black-walnut'), 2));
    expect(weight.steps.map(({ formula }) => formula)).toContain('outline-area');
    const rough = unwrap(workOutWeight({ ...piece, measured: null }, wood('black-walnut'), 2));
    expect(weight.now.value).toBeCloseTo(rough.now.value, 6);
  });

  it('each open to a formula, its inputs and a source, the widths with where they are', () => {
    const figures = sizeFigures(piece, measure, 'imperial');
    expect(figures.map(({ term, value }) => `${term}: ${value}`)).toEqual([
      'Face: 12.00 sq ft',
      'Volume: 0.0566 m³',
      'Board feet, what is there: 24.00',
      'Board feet, by the rule for boards: 22',
      'Narrowest: 12 in, at 0 in',
      'Widest: 24 in, at 96 in',
    ]);
    for (const { how } of figures) expect([how].flat().length).toBeGreaterThan(0);
  });

  it('are by three widths where nobody measured it', () => {
    const rough = figuredPiece({ ...SLAB, shape: null }, 'imperial');
    expect(rough.measured).toBeNull();
    expect(faceAndVolume(rough).squareMetres.how.formula).toBe('three-width-area');
    expect(workOutBoardFeet(rough, 8).sellers).toBeUndefined();
  });
});

describe('a seller’s figures beside ours', () => {
  const NOTHING = {
    name: '',
    lengthNm: null,
    widthNm: null,
    thicknessNm: null,
    volumeMm3: null,
    massMg: null,
    mcTenths: null,
  };
  const ours = ourFigures(SLAB, piece, speciesMeant(SLAB.species));
  const compare = (said: object) => compareSeller({ ...NOTHING, ...said }, piece, ours, 'imperial');

  it('have a row for each figure that was said, with the difference', () => {
    expect(compare({})).toEqual([]);
    const rows = compare({
      lengthNm: nanometres(mm(98 * INCH)),
      widthNm: nanometres(mm(24 * INCH)),
      volumeMm3: readVolume('30 bf'),
      mcTenths: 80,
    });
    expect(rows.map(({ term, ours: our, theirs, difference }) => [term, our, theirs, difference])).toEqual([
      ['Length', '96 in', '98 in', '2 in more'],
      ['Width, at the widest', '24 in', '24 in', 'the same'],
      ['Volume', '24.0 bf', '30.0 bf', '6.0 bf more (25 %)'],
      ['Moisture', '12 %', '8 %', '4 points drier'],
    ]);
  });

  // NIST Special Publication 811 (2008), appendix B.8: 1 board foot is 2.359 737 E-03 m³; 1 ft³ is 2.831 685 E-02 m³.
  it.each([
    ['1 bf', 2_359_737],
    ['1 ft³', 28_316_847],
    ['42.5 bf', 100_288_832],
    ['0,1 m³', 100_000_000],
    ['0.1 m3', 100_000_000],
  ])('read %s as %d mm³', (text, cubicMm) => {
    expect(readVolume(text)).toBe(cubicMm);
  });

  it.each(['', '42', 'bf', '0 bf', '-3 bf', '60 m³', '12 apples'])('take %j for no volume', (text) => {
    expect(readVolume(text)).toBeUndefined();
  });
});
