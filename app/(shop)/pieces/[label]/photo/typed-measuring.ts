import type { PhotoMeasuring, Reference } from '@/shared/outline/outline-from-photo';
import { type Pixel, SHEETS } from '@/shared/outline/sheet-marks';
import { parseLength } from '@/shared/units/parse-length';
import { sayLengthError } from '@/shared/units/say-length-error';
import type { UnitSystem } from '@/shared/units/unit-system';

export const REFERENCES = ['A3', 'A4', 'Letter', 'Tabloid', 'own', 'tapes'] as const;
export type ReferenceName = (typeof REFERENCES)[number];

export const OWN_FIELDS = ['long', 'short'] as const;
export const TAPE_FIELDS = ['firstLow', 'firstHigh', 'firstCross', 'secondLow', 'secondHigh', 'secondCross'] as const;
export type SizeField = (typeof OWN_FIELDS)[number] | (typeof TAPE_FIELDS)[number];

/** What was tapped and typed so far. */
export type TypedMeasuring = {
  readonly reference: ReferenceName;
  readonly sizes: Readonly<Record<SizeField, string>>;
  /** The first side marked is not the one that looks it, the long or the short. */
  readonly otherWay: boolean;
  readonly marks: readonly Pixel[];
  readonly edge: readonly Pixel[];
  readonly gaps: readonly (readonly Pixel[])[];
  readonly fromOtherEnd: boolean;
};

export const NOTHING_TYPED: TypedMeasuring = {
  reference: 'A3',
  sizes: {
    long: '',
    short: '',
    firstLow: '0',
    firstHigh: '',
    firstCross: '',
    secondLow: '0',
    secondHigh: '',
    secondCross: '',
  },
  otherWay: false,
  marks: [],
  edge: [],
  gaps: [],
  fromOtherEnd: false,
};

type ReadReference = {
  readonly reference?: Reference;
  readonly problems: Readonly<Partial<Record<SizeField, string>>>;
};

/** The sheet or the tapes as they were chosen and typed; what does not read, beside its field. */
export function readReference(typed: TypedMeasuring, prefer: UnitSystem): ReadReference {
  const problems: Partial<Record<SizeField, string>> = {};
  const read = (field: SizeField, least: number): number => {
    const text = typed.sizes[field].trim();
    if (text === '') problems[field] = 'Give this length.';
    const length = text === '' ? undefined : parseLength(text, { prefer });
    if (length && !length.ok) problems[field] = sayLengthError(length.error, { prefer });
    const value = length?.ok ? Number(length.value) / 1e6 : Number.NaN;
    if (value < least) problems[field] = 'It is longer than nothing.';
    return value;
  };
  const { reference: name } = typed;
  if (name !== 'own' && name !== 'tapes') return { reference: asItLies(SHEETS[name], typed), problems };
  if (name === 'own') {
    const [height, width] = [read('long', 1e-6), read('short', 1e-6)];
    return Object.keys(problems).length ? { problems } : { reference: asItLies({ width, height }, typed), problems };
  }
  const tape = (low: SizeField, high: SizeField, cross: SizeField) => {
    const ends = [read(low, 0), read(high, 0)] as const;
    const crossing = read(cross, 0);
    if (ends[0] >= ends[1]) problems[high] ??= 'It is further along the tape than the first end.';
    if (crossing <= ends[0] || crossing >= ends[1]) problems[cross] ??= 'The tapes cross between their two ends.';
    return { ends, crossing };
  };
  const tapes = [tape('firstLow', 'firstHigh', 'firstCross'), tape('secondLow', 'secondHigh', 'secondCross')] as const;
  return Object.keys(problems).length ? { problems } : { reference: { kind: 'tapes', tapes }, problems };
}

/** Everything needed to work the outline out, or undefined while a mark or a length is missing. */
export function measuringOf(typed: TypedMeasuring, prefer: UnitSystem): PhotoMeasuring | undefined {
  const { reference } = readReference(typed, prefer);
  const [a, b, c, d] = typed.marks;
  if (!reference || !a || !b || !c || !d) return undefined;
  const { edge, gaps, fromOtherEnd } = typed;
  return { reference, marks: [a, b, c, d], edge, gaps: gaps.filter((gap) => gap.length > 0), fromOtherEnd };
}

/** The side of a sheet that looks longer on the photo is taken for its long one, unless told that it lies the other way. */
function asItLies(
  { width, height }: { readonly width: number; readonly height: number },
  { marks, otherWay }: TypedMeasuring,
): Reference {
  const [a, b, c, d] = marks;
  const far = (p?: Pixel, q?: Pixel) => (p && q ? Math.hypot(p.x - q.x, p.y - q.y) : 0);
  const looksLong = far(a, b) + far(c, d) > far(b, c) + far(d, a);
  const isLong = looksLong !== otherWay;
  const [short, long] = [Math.min(width, height), Math.max(width, height)];
  return { kind: 'sheet', width: isLong ? long : short, height: isLong ? short : long };
}
