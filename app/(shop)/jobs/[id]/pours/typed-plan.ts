import type { PourFigures } from '@/app/_server/pours/kept-plan';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import type { Solid } from '@/shared/pour/solid';
import type { PourVoid } from '@/shared/pour/void-volume';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { parseLength } from '@/shared/units/parse-length';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { parseTemperature } from '@/shared/units/parse-temperature';
import { sayLengthError } from '@/shared/units/say-length-error';
import { sayQuantityError } from '@/shared/units/say-quantity-error';
import { type Microlitres, microlitres } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A thing of a drawing that is to be filled, as it stands in the form. */
type TypedFill = { id: string; name: string; on: boolean; area: string; depth: string };
/** One place along a river: its width at the top, at the bottom where that is another, its own depth where it has one. */
type TypedStation = { at: string; width: string; bottom: string; depth: string };

export const anotherStation = (): TypedStation => ({ at: '', width: '', bottom: '', depth: '' });

export const SOLIDS = ['box', 'cylinder', 'ellipse', 'cone-frustum', 'sloped-tray', 'v-groove'] as const;
export type SolidShape = (typeof SOLIDS)[number];

/** The measures of each shape, in the order they are asked for. */
export const MEASURES: Record<SolidShape, readonly (readonly [name: string, words: string])[]> = {
  box: [
    ['length', 'Length'],
    ['width', 'Width'],
    ['depth', 'Depth'],
  ],
  cylinder: [
    ['diameter', 'Diameter'],
    ['depth', 'Depth'],
  ],
  ellipse: [
    ['length', 'Length'],
    ['width', 'Width'],
    ['depth', 'Depth'],
  ],
  'cone-frustum': [
    ['topDiameter', 'Diameter at the top'],
    ['bottomDiameter', 'Diameter at the bottom'],
    ['depth', 'Depth'],
  ],
  'sloped-tray': [
    ['topLength', 'Length at the top'],
    ['topWidth', 'Width at the top'],
    ['bottomLength', 'Length at the bottom'],
    ['bottomWidth', 'Width at the bottom'],
    ['depth', 'Depth'],
  ],
  'v-groove': [
    ['length', 'Length'],
    ['width', 'Width at the top'],
    ['depth', 'Depth'],
  ],
};

/** A pour as it is typed. Wood that stands in a form is a volume. */
export type TypedPlan = {
  name: string;
  systemId: string;
  from: 'river' | 'drawing' | 'form' | 'shape' | 'stations';
  fills: TypedFill[];
  shape: SolidShape;
  measures: Record<string, string>;
  wood: string;
  stations: TypedStation[];
  depth: string;
  /** Of a river that was searched for: its area is the book's, its depth is typed. */
  riverDepth: string;
  sealArea: string;
  sealRate: string;
  leakage: string;
  loss: string;
  room: string;
  bucket: string;
  minutes: string;
  step: string;
  lifts: string;
  first: string;
  reason: string;
};

export type PlanReading = {
  figures?: PourFigures;
  first?: CalendarDate;
  /** What does not read, by field. */
  faults: Record<string, string>;
};

type Typing = {
  prefer: UnitSystem;
  today: CalendarDate;
  order: DateOrder;
  /** The area of the river that was searched for, square millimetres. */
  riverArea?: number | undefined;
};

/** A square foot in square millimetres (international foot, 1959), and a US fluid ounce in microlitres over it. */
const SQUARE_FOOT = 92_903.04;
const FLUID_OUNCE = 29_573.529_562_5;

/** Fills are typed in square centimetres or square inches. */
export const SQUARE: Record<UnitSystem, number> = { metric: 100, imperial: 645.16 };

/** Bare wood to be sealed is typed in square metres or square feet. */
export const BARE: Record<UnitSystem, number> = { metric: 1e6, imperial: SQUARE_FOOT };

/** Reads the whole form; what does not read is named under its field. */
export function readTypedPlan(typed: TypedPlan, { prefer, today, order, riverArea }: Typing): PlanReading {
  const faults: Record<string, string> = {};
  const fault = (field: string, words: string): undefined => {
    faults[field] ??= words;
  };
  const length = (field: string, text: string): Nanometres | undefined => {
    const read = parseLength(text, { prefer });
    return read.ok ? read.value : fault(field, sayLengthError(read.error, { prefer }));
  };
  const number = (field: string, text: string, most: number): number | undefined => {
    const value = Number(text.trim().replace(',', '.'));
    if (text.trim() !== '' && Number.isFinite(value) && value >= 0 && value <= most) return value;
    return fault(field, `Type a number from 0 to ${most}.`);
  };
  const volume = (field: string, text: string): Microlitres | undefined => {
    if (text.trim() === '') return microlitres(0);
    const read = parseQuantity(text, { unit: 'uL', prefer, bareUnit: prefer === 'metric' ? 'mL' : 'fl oz' });
    return read.ok ? read.value : fault(field, sayQuantityError(read.error));
  };
  const mass = (field: string, text: string) => {
    const read = parseQuantity(text, { unit: 'mg', prefer, bareUnit: 'g' });
    if (!read.ok) return fault(field, sayQuantityError(read.error));
    return read.value > 0 ? read.value : fault(field, 'It must be more than nothing.');
  };
  const degrees = parseTemperature(typed.room, { prefer });
  if (!degrees.ok)
    fault('room', `Give the temperature of the room, for example ${prefer === 'metric' ? '20 °C' : '68 °F'}.`);
  const day = readTypedDate(typed.first, { today, order, aim: 'ahead' });
  const first = day.ok && day.value.precision === 'day' ? day.value.date : undefined;
  if (!first) fault('first', 'Give one whole day, for example 12 Dec 2026.');
  if (typed.name.trim() === '') fault('name', 'Give the pour a name, for example River.');
  if (typed.systemId === '') fault('systemId', 'Choose the resin.');
  const lifts = typed.lifts.trim() === '' ? undefined : Number(typed.lifts);
  if (lifts !== undefined && !(Number.isInteger(lifts) && lifts >= 1 && lifts <= 40)) {
    fault('lifts', 'Give a whole number from 1 to 40, or leave it to the sheet.');
  }
  const space = spaceOf(typed, { length, number, volume, fault, square: SQUARE[prefer], riverArea });
  const area = typed.sealArea.trim() === '' ? 0 : number('sealArea', typed.sealArea, 10_000);
  const rate = area === 0 ? 0 : number('sealRate', typed.sealRate, 10_000);
  const leakage = number('leakage', typed.leakage, 100);
  const loss = volume('loss', typed.loss);
  const [bucket, step] = [mass('bucket', typed.bucket), mass('step', typed.step)];
  const minutes = number('minutes', typed.minutes, 600);
  if (minutes === 0) fault('minutes', 'It takes some time.');
  const metric = prefer === 'metric';
  if (
    !space ||
    area === undefined ||
    rate === undefined ||
    leakage === undefined ||
    loss === undefined ||
    !bucket ||
    !step ||
    !minutes ||
    !degrees.ok
  ) {
    return { faults, first };
  }
  return {
    faults,
    first,
    figures: {
      space,
      sealArea: Math.round(area * BARE[prefer]),
      // Millilitres a square metre, or fluid ounces a square foot.
      sealPerSquareMetre: microlitres(Math.round(metric ? rate * 1000 : (rate * FLUID_OUNCE * 1e6) / SQUARE_FOOT)),
      leakagePercent: leakage,
      lossPerBatch: loss,
      room: degrees.value,
      bucket,
      minutesPerKilogram: minutes,
      step,
      ...(lifts !== undefined && { lifts }),
    },
  };
}

type Readers = {
  length: (field: string, text: string) => Nanometres | undefined;
  number: (field: string, text: string, most: number) => number | undefined;
  volume: (field: string, text: string) => Microlitres | undefined;
  fault: (field: string, words: string) => undefined;
  /** What an area is typed in, square millimetres. */
  square: number;
  riverArea: number | undefined;
};

function spaceOf(
  typed: TypedPlan,
  { length, number, volume, fault, square, riverArea }: Readers,
): PourVoid | undefined {
  const ticked = () =>
    typed.fills.flatMap((fill, nr) =>
      fill.on
        ? [
            {
              area: (number(`area.${nr}`, fill.area, 1_000_000) ?? 0) * square,
              depth: length(`depth.${nr}`, fill.depth) ?? nanometres(0),
            },
          ]
        : [],
    );
  if (typed.from === 'river' || typed.from === 'drawing') {
    const fills = ticked();
    if (typed.from === 'river') {
      if (riverArea === undefined) {
        return fault('river', 'That river is not there any more. Search for another, or give the size another way.');
      }
      const depth = length('riverDepth', typed.riverDepth);
      if (depth === 0) fault('riverDepth', 'It must be more than nothing.');
      // The river goes first: it is what the pour is about.
      fills.unshift({ area: riverArea, depth: depth ?? nanometres(0) });
    }
    if (fills.length === 0) return fault('fills', 'Tick what the resin goes into.');
    return fills.every((fill) => fill.area > 0 && fill.depth > 0) ? { from: 'fills', fills } : undefined;
  }
  if (typed.from === 'stations') {
    const rows = typed.stations.filter(({ at, width }) => at.trim() !== '' || width.trim() !== '');
    if (rows.length < 2) return fault('stations', 'Give the width of the river at two places at least.');
    const own = (field: string, text: string) =>
      text.trim() === '' ? undefined : (length(field, text) ?? nanometres(-1));
    const widths = rows.map((row, nr) => {
      const [bottom, depth] = [own(`bottom.${nr}`, row.bottom), own(`deep.${nr}`, row.depth)];
      if (depth === 0) fault(`deep.${nr}`, 'It must be more than nothing.');
      return {
        at: length(`at.${nr}`, row.at) ?? nanometres(-1),
        width: length(`width.${nr}`, row.width) ?? nanometres(-1),
        ...(bottom !== undefined && { bottom }),
        ...(depth !== undefined && { depth }),
      };
    });
    const deepest = Math.max(...widths.map(({ depth = 0 }) => depth));
    const isOwn = widths.every(({ depth = 0 }) => depth > 0) && typed.depth.trim() === '';
    const depth = isOwn ? nanometres(deepest) : length('depth', typed.depth);
    const isRead = widths.every(
      ({ at, width, bottom = 0, depth: its = 1 }) => Math.min(at, width, bottom) >= 0 && its > 0,
    );
    return depth && isRead ? { from: 'stations', depth, widths } : undefined;
  }
  const shape = typed.from === 'form' ? 'box' : typed.shape;
  const measures: Record<string, Nanometres> = {};
  for (const [name] of MEASURES[shape]) {
    const value = length(name, typed.measures[name] ?? '');
    if (value === undefined) continue;
    measures[name] = value;
    const mayBeZero = name.startsWith('bottom');
    if (value === 0 && !mayBeZero) fault(name, 'It must be more than nothing.');
  }
  const wood = typed.from === 'form' ? volume('wood', typed.wood) : microlitres(0);
  const isWhole = MEASURES[shape].every(([name]) => measures[name] !== undefined);
  return isWhole && wood !== undefined ? { from: 'solid', solid: { shape, ...measures } as Solid, wood } : undefined;
}
