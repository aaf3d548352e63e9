import type { Parts, ResinSheet } from '@/shared/pour/resin-sheet';
import { nanometres } from '@/shared/units/nanometres';
import { parseLength } from '@/shared/units/parse-length';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { parseTemperature } from '@/shared/units/parse-temperature';
import { printLengthExact } from '@/shared/units/print-length-exact';
import { printQuantityExact } from '@/shared/units/print-quantity-exact';
import { printTemperature } from '@/shared/units/print-temperature';
import { sayLengthError } from '@/shared/units/say-length-error';
import { sayQuantityError } from '@/shared/units/say-quantity-error';
import { milligrams } from '@/shared/units/stock-unit';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import type { UnitSystem } from '@/shared/units/unit-system';

/** One row of the depth table as it is typed. */
export type TypedDepth = { least: string; most: string; upTo: string; mass: string };

/** One row of the pot lives as it is typed. */
export type TypedPotLife = { minutes: string; mass: string; at: string };

const FIELDS = [
  'massA',
  'massB',
  'volumeA',
  'volumeB',
  'densityA',
  'densityB',
  'mixedDensity',
  'tolerance',
  'againFrom',
  'againTo',
  'demould',
  'fullCure',
  'leastRoom',
  'mostRoom',
  'shrinkage',
] as const;
export type SheetField = (typeof FIELDS)[number];

/** A data sheet as it is typed. */
export type TypedSheet = Record<SheetField, string> & {
  depths: TypedDepth[];
  potLives: TypedPotLife[];
  sets: boolean;
};

export type SheetReading = { facts: Omit<ResinSheet, 'from'>; faults: Record<string, string> };

const NO_DEPTH: TypedDepth = { least: '', most: '', upTo: '', mass: '' };
const NO_POT_LIFE: TypedPotLife = { minutes: '', mass: '', at: '' };

/** Reads every field; what does not read is named under its field, and left out of the facts. */
export function readTypedSheet(typed: TypedSheet, prefer: UnitSystem): SheetReading {
  const faults: Record<string, string> = {};
  const number = (field: string, text: string, times = 1): number | undefined => {
    const trimmed = text.trim();
    if (trimmed === '') return undefined;
    const value = Number(trimmed.replace(',', '.'));
    if (/^\d+([.,]\d+)?$/.test(trimmed) && Number.isFinite(value)) return Math.round(value * times * 1000) / 1000;
    faults[field] = 'Type a number.';
    return undefined;
  };
  const whole = (field: string, text: string, times = 1) => {
    const value = number(field, text, times);
    return value === undefined ? undefined : Math.round(value);
  };
  const parts = (of: 'mass' | 'volume'): Parts | undefined => {
    const [a, b] = [number(`${of}A`, typed[`${of}A`]), number(`${of}B`, typed[`${of}B`])];
    if (a !== undefined && b !== undefined) return { a, b };
    const missing = a === undefined ? 'A' : 'B';
    if ((a ?? b) !== undefined) faults[`${of}${missing}`] ??= `Give part ${missing} too.`;
    return undefined;
  };
  const temperature = (field: string, text: string) => {
    if (text.trim() === '') return undefined;
    const read = parseTemperature(text, { prefer });
    if (read.ok) return read.value;
    faults[field] = 'That does not read as a temperature. Type it like 23 °C or 73 °F.';
    return undefined;
  };
  const length = (field: string, text: string) => {
    if (text.trim() === '') return undefined;
    const read = parseLength(text, { prefer });
    if (read.ok) return read.value;
    faults[field] = sayLengthError(read.error, { prefer });
    return undefined;
  };
  const mass = (field: string, text: string) => {
    if (text.trim() === '') return undefined;
    const read = parseQuantity(text, { unit: 'mg', prefer, bareUnit: 'g' });
    if (read.ok) return read.value;
    faults[field] = sayQuantityError(read.error);
    return undefined;
  };
  const depths = typed.depths.flatMap((row, nr) => {
    if (Object.values(row).every((text) => text.trim() === '')) return [];
    const most = length(`most.${nr}`, row.most);
    if (most === undefined) faults[`most.${nr}`] ??= 'Give the greatest depth of one lift.';
    const least = length(`least.${nr}`, row.least) ?? nanometres(0);
    const [upTo, mostMass] = [temperature(`upTo.${nr}`, row.upTo), mass(`mass.${nr}`, row.mass)];
    return most === undefined ? [] : [{ least, most, upTo, mostMass }];
  });
  const potLives = typed.potLives.flatMap((row, nr) => {
    if (Object.values(row).every((text) => text.trim() === '')) return [];
    const minutes = whole(`potMinutes.${nr}`, row.minutes);
    if (minutes === undefined) faults[`potMinutes.${nr}`] ??= 'Give the minutes too.';
    const of = mass(`potMass.${nr}`, row.mass) ?? milligrams(100_000);
    const at = temperature(`potAt.${nr}`, row.at) ?? tenthsCelsius(230);
    return minutes === undefined ? [] : [{ minutes, mass: of, at }];
  });
  return {
    faults,
    facts: {
      byMass: parts('mass'),
      byVolume: parts('volume'),
      densityA: whole('densityA', typed.densityA),
      densityB: whole('densityB', typed.densityB),
      mixedDensity: whole('mixedDensity', typed.mixedDensity),
      toleranceTenths: whole('tolerance', typed.tolerance, 10),
      depths,
      potLives,
      againFromHours: number('againFrom', typed.againFrom),
      againToHours: number('againTo', typed.againTo),
      demouldHours: number('demould', typed.demould),
      fullCureDays: number('fullCure', typed.fullCure),
      leastRoom: temperature('leastRoom', typed.leastRoom),
      mostRoom: temperature('mostRoom', typed.mostRoom),
      shrinkageHundredths: whole('shrinkage', typed.shrinkage, 100),
      ...(typed.sets && { setsTogether: true }),
    },
  };
}

/** The field of the form that a fault of the facts stands beside. */
const FIELD_OF_FACT: Readonly<Record<string, string>> = {
  byMass: 'massB',
  byVolume: 'volumeB',
  toleranceTenths: 'tolerance',
  againFromHours: 'againFrom',
  againToHours: 'againTo',
  demouldHours: 'demould',
  fullCureDays: 'fullCure',
  shrinkageHundredths: 'shrinkage',
};

/** A fault of a row of the depth table: `depthMost.1` stands beside `most.1`. */
export const fieldOfFact = (field: string): string =>
  FIELD_OF_FACT[field] ??
  field.replace(/^depth(Least|Most|Mass)\.(\d+)$/, (_, name: string, nr: string) => `${name.toLowerCase()}.${nr}`);

/** Facts of the book as somebody would type them; every field empty without any. */
export function typeSheet(facts: ResinSheet | undefined, prefer: UnitSystem): TypedSheet {
  const text = (value: number | undefined, over = 1) => (value === undefined ? '' : String(value / over));
  const degrees = (value: ResinSheet['leastRoom']) => (value === undefined ? '' : printTemperature(value, { prefer }));
  const { byMass, byVolume } = facts ?? {};
  return {
    massA: text(byMass?.a),
    massB: text(byMass?.b),
    volumeA: text(byVolume?.a),
    volumeB: text(byVolume?.b),
    densityA: text(facts?.densityA),
    densityB: text(facts?.densityB),
    mixedDensity: text(facts?.mixedDensity),
    tolerance: text(facts?.toleranceTenths, 10),
    againFrom: text(facts?.againFromHours),
    againTo: text(facts?.againToHours),
    demould: text(facts?.demouldHours),
    fullCure: text(facts?.fullCureDays),
    leastRoom: degrees(facts?.leastRoom),
    mostRoom: degrees(facts?.mostRoom),
    shrinkage: text(facts?.shrinkageHundredths, 100),
    sets: facts?.setsTogether ?? false,
    depths: facts?.depths.length
      ? facts.depths.map(({ least, most, upTo, mostMass }) => ({
          least: least > 0 ? printLengthExact(least, prefer) : '',
          most: printLengthExact(most, prefer),
          upTo: degrees(upTo),
          mass: mostMass === undefined ? '' : printQuantityExact(mostMass, 'mg'),
        }))
      : [NO_DEPTH],
    potLives: facts?.potLives?.length
      ? facts.potLives.map(({ minutes, mass, at }) => ({
          minutes: text(minutes),
          mass: printQuantityExact(mass, 'mg'),
          at: degrees(at),
        }))
      : [NO_POT_LIFE],
  };
}

export const anotherDepth = (): TypedDepth => ({ ...NO_DEPTH });
export const anotherPotLife = (): TypedPotLife => ({ ...NO_POT_LIFE });
export const SHEET_FIELDS = FIELDS;
