import type { PieceLine, ReadingLine } from '@/app/_server/stock/load-piece';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { NO_MARKS } from '@/shared/outline/piece-marks';
import { unwrap } from '@/shared/result/result';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';
import { nanometres } from '@/shared/units/nanometres';

/** A reading of which only the least is noted, but for what a test says. */
export function readingOfATest(fields: Partial<ReadingLine> & Pick<ReadingLine, 'takenOn' | 'mcTenths'>): ReadingLine {
  return {
    meter: '',
    spot: '',
    meterKind: '',
    depthNm: null,
    alongNm: null,
    acrossNm: null,
    speciesSetting: '',
    woodTenthsC: null,
    correctedTenths: null,
    inherited: false,
    ...fields,
  };
}

/** A walnut slab of 3000 × 700 × 58 mm of which nothing else is known, but for what a test says. */
export function pieceLineOfATest(fields: Partial<PieceLine> = {}): PieceLine {
  const width = nanometres(700_000_000);
  const readings = fields.readings ?? [];
  return {
    stockId: 7,
    label: unwrap(mintOwnLabel('slab', 41)).code,
    form: 'slab',
    species: 'Walnut',
    lengthNm: nanometres(3_000_000_000),
    widthStartNm: width,
    widthMiddleNm: width,
    widthEndNm: width,
    thicknessNm: nanometres(58_000_000),
    flitch: '',
    flitchNumber: null,
    cost: null,
    receivedOn: '2026-08-01' as CalendarDate,
    note: '',
    place: null,
    placeLabel: null,
    origin: '',
    sawn: '',
    sapwoodNm: null,
    cupNm: null,
    bowNm: null,
    twistNm: null,
    quarters: null,
    surfacing: '',
    grain: '',
    faceA: '',
    faceB: '',
    shape: null,
    marks: NO_MARKS,
    marksOfBefore: [],
    usable: null,
    pairedWith: null,
    boards: [],
    ...fields,
    readings,
    facts: { inStock: true, hold: 'free', flags: [], form: 'slab', readings, ...fields.facts },
  };
}
