import type { FitAsk } from '@/app/_server/fits/fit-ask';
import type {
  MakeKind,
  QuestionField,
  QuestionProblems,
  ShapeKind,
  TypedQuestion,
} from '@/app/(shop)/on-hand/fits/typed-question';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { sayDateError } from '@/shared/calendar/say-date-error';
import { type FitRequestError, readRequest } from '@/shared/fit/fit-request';
import type { RiverRequest } from '@/shared/fit/fit-river';
import { LEAST_EXPONENT, MOST_EXPONENT, type TopShape } from '@/shared/fit/top-shape';
import { err, ok, type Result } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { parseLength } from '@/shared/units/parse-length';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { sayLengthError } from '@/shared/units/say-length-error';
import { sayQuantityError } from '@/shared/units/say-quantity-error';
import type { UnitSystem } from '@/shared/units/unit-system';

/** How this workshop's typed numbers and dates are read. */
export type QuestionTyping = { readonly prefer: UnitSystem; readonly today: CalendarDate; readonly order: DateOrder };

/** What is typed as what can be asked, or every field that does not read, with what to type instead. Empty allowances are none. */
export function readTyped(
  typed: TypedQuestion,
  { prefer, today, order }: QuestionTyping,
): Result<FitAsk, QuestionProblems> {
  const problems: QuestionProblems = {};
  const length = (field: QuestionField, ifEmpty?: Nanometres): Nanometres => {
    if (typed[field].trim() === '' && ifEmpty !== undefined) return ifEmpty;
    const read = parseLength(typed[field], { prefer, ...(field === 'thick' && { mode: 'thickness' }) });
    if (!read.ok) problems[field] = sayLengthError(read.error, { prefer });
    return read.ok ? read.value : nanometres(0);
  };
  const number = (field: QuestionField, { least, most, say }: { least: number; most: number; say: string }): number => {
    const plain = typed[field]
      .trim()
      .replace(',', '.')
      .replace(/\s*[%°]$/, '');
    const value = /^\d{1,3}(\.\d{1,2})?$/.test(plain) ? Number(plain) : Number.NaN;
    if (!(value >= least && value <= most)) problems[field] = say;
    return Number.isNaN(value) ? least : value;
  };
  const none = nanometres(0);
  const shape = readShape(typed.shape, length, number);
  const trim = length('trim', none);
  const edgeAllowance = length('edge', none);
  const grainWindow = number('grain', { least: 0, most: 45, say: 'The grain may run from 0 to 45 degrees off.' });
  const thickness = typed.thick.trim() === '' ? undefined : length('thick');
  if (thickness === 0 && !problems.thick)
    problems.thick = 'A finished thickness is above zero. Leave it empty for any.';
  const mc =
    typed.mc.trim() === ''
      ? undefined
      : number('mc', { least: 4, most: 60, say: 'Type a moisture from 4 to 60 %, or leave it empty for any.' });
  const request = {
    shape,
    grainWindow,
    edgeAllowance,
    trims: { start: trim, end: trim },
    filling: typed.fill,
    heartwoodOnly: typed.heart,
    best: typed.best,
  };
  const make = readMake(typed.make, { thickness, length, problems });
  const dryBy = readDay(typed.by, { today, order }, problems);
  if (dryBy !== undefined && mc === undefined) problems.mc ??= 'Type how dry it has to be by that day.';
  const mostGrams = readWeight(typed.weight, prefer, problems);
  if (mostGrams !== undefined && thickness === undefined) problems.thick ??= 'A weight needs a finished thickness.';
  const checked = readRequest(request);
  if (!checked.ok) {
    const [field, says] = sayRequestError(checked.error, typed.shape);
    problems[field] ??= says;
  }
  if (Object.keys(problems).length > 0) return err(problems);
  return ok({
    request,
    make,
    ...(dryBy !== undefined && { dryBy }),
    ...(mostGrams !== undefined && { mostGrams }),
    ...(thickness !== undefined && { thickness }),
    ...(mc !== undefined && { mostTenths: Math.round(mc * 10) }),
    ...(typed.species !== '' && { species: typed.species }),
    freeOnly: typed.free,
  });
}

function readMake(
  make: MakeKind,
  given: {
    thickness: Nanometres | undefined;
    length: (field: QuestionField) => Nanometres;
    problems: QuestionProblems;
  },
): FitAsk['make'] {
  if (make !== 'river') return { of: make };
  const { thickness, length, problems } = given;
  if (thickness === undefined) problems.thick ??= 'A river needs a finished thickness: it is as deep.';
  const river: RiverRequest = {
    least: length('gap'),
    leastWood: length('back'),
    kerf: KERF,
    thickness: thickness ?? nanometres(1),
  };
  if (river.leastWood <= 0) problems.back ??= 'Each piece needs some wood at its back.';
  return { of: 'river', river };
}

/** What a saw takes between two pieces of one slab. Common practice. */
const KERF = nanometres(3_200_000);

function readDay(
  text: string,
  how: { today: CalendarDate; order: DateOrder },
  problems: QuestionProblems,
): CalendarDate | undefined {
  if (text.trim() === '') return undefined;
  const read = readTypedDate(text, { ...how, aim: 'ahead' });
  if (!read.ok) problems.by = sayDateError(read.error);
  else if (read.value.precision !== 'day') problems.by = 'Give the day too, for example 12 Dec 2026.';
  else if (read.value.date < how.today) problems.by = 'That day has passed.';
  else return read.value.date;
  return undefined;
}

function readWeight(text: string, prefer: UnitSystem, problems: QuestionProblems): number | undefined {
  if (text.trim() === '') return undefined;
  const read = parseQuantity(text, { unit: 'mg', prefer });
  if (!read.ok) problems.weight = sayQuantityError(read.error);
  else if (read.value <= 0) problems.weight = 'A weight is above zero. Leave it empty for any.';
  else return Math.round(read.value / 1000);
  return undefined;
}

function readShape(
  kind: ShapeKind,
  length: (field: QuestionField, ifEmpty?: Nanometres) => Nanometres,
  number: (field: QuestionField, within: { least: number; most: number; say: string }) => number,
): TopShape {
  switch (kind) {
    case 'round':
      return { kind, diameter: length('l') };
    case 'rectangle':
      return { kind, length: length('l'), width: length('w'), cornerRadius: length('r', nanometres(0)) };
    case 'oval':
      return { kind, length: length('l'), width: length('w') };
    case 'superellipse': {
      const say = `Type an exponent from ${LEAST_EXPONENT} to ${MOST_EXPONENT}: 2 is an oval, 2.5 a soft rectangle.`;
      const exponent = number('n', { least: LEAST_EXPONENT, most: MOST_EXPONENT, say });
      return { kind, length: length('l'), width: length('w'), exponent };
    }
  }
}

function sayRequestError(error: FitRequestError, kind: ShapeKind): [QuestionField, string] {
  switch (error.code) {
    case 'bad-length':
      return ['l', `The ${kind === 'round' ? 'diameter' : 'length'} is above zero and at most 15 m.`];
    case 'bad-width':
      return ['w', 'The width is above zero and at most 15 m.'];
    case 'bad-corner-radius':
      return ['r', 'A corner radius is at most half the shorter side.'];
    case 'bad-exponent':
      return ['n', `Type an exponent from ${error.least} to ${error.most}.`];
    case 'bad-grain-window':
      return ['grain', 'The grain may run from 0 to 45 degrees off.'];
    case 'bad-allowance':
      return ['edge', 'An allowance cannot be below zero.'];
    case 'bad-tolerance':
    case 'bad-nearly-from':
      throw new Error(`Not asked by this form: ${error.code}`);
  }
}
