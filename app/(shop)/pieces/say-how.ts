import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { How } from '@/shared/wood/explained';
import { WOOD_FORMULAS } from '@/shared/wood/formulas';
import { type Source, WOOD_SOURCES, type WoodSourceId } from '@/shared/wood/sources';

export type SaidHow = {
  readonly written: string;
  readonly says: string;
  readonly inputs: readonly { readonly term: string; readonly value: string }[];
  readonly sources: readonly string[];
};

type Say = readonly [term: string, unit?: string];

/** Every input a formula of the wood can name, in words. A unit that is left out is none. */
export const INPUT_WORDS: Readonly<Record<string, Say>> = {
  species: ['Figures of'],
  mc: ['Moisture content M', '%'],
  fromMc: ['From moisture content', '%'],
  toMc: ['To moisture content', '%'],
  green: ['Specific gravity, green'],
  at12: ['Specific gravity at 12 %'],
  G: ['Specific gravity G at this moisture'],
  densityKgPerM3: ['Density ρ', 'kg/m³'],
  cubicMetres: ['Volume V', 'm³'],
  squareMetres: ['Face A', 'm²'],
  points: ['Points of the outline'],
  kilograms: ['Mass', 'kg'],
  people: ['People'],
  limitKg: ['Limit for one', 'kg'],
  HM: ['Reach, HM'],
  VM: ['Height, VM'],
  DM: ['Travel, DM'],
  AM: ['Turn, AM'],
  FM: ['Often, FM'],
  CM: ['Grip, CM'],
  lengthMm: ['Length L', 'length'],
  startMm: ['Width at the start', 'length'],
  middleMm: ['Width in the middle', 'length'],
  endMm: ['Width at the end', 'length'],
  thicknessMm: ['Thickness T', 'length'],
  widthMm: ['Width D', 'length'],
  alongMm: ['Along the line x', 'length'],
  widthInches: ['Width', 'in'],
  wholeFeet: ['Whole feet', 'ft'],
  surfaceTotal: ['Surface measure SM', 'sq ft'],
  thicknessInches: ['Thickness counted', 'in'],
  tangentialShare: ['Share that moves tangentially'],
  tangential: ['Tangential'],
  radial: ['Radial'],
  movementMm: ['Movement', 'length'],
  clearanceMm: ['Clearance', 'length'],
  'temperature°C': ['Temperature T', '°C'],
  'temperature°F': ['Temperature T', '°F'],
  humidityPercent: ['Relative humidity h', '%'],
  rawPercent: ['The meter showed', '%'],
  woodC: ['Temperature of the wood', '°C'],
  calibrationC: ['The meter is set for', '°C'],
  readings: ['Days with readings'],
  lastReadingPercent: ['Last reading M₀', '%'],
  targetPercent: ['Target', '%'],
  emc: ['The room’s EMC', '%'],
  emcDeviation: ['EMC may be off by about', 'points'],
  priorDaysTo20: ['Days from green to 20 %, before its readings', 'days'],
  priorDeviation: ['Spread of ln k, before its readings'],
  cupMm: ['Cup', 'length'],
  bowMm: ['Bow', 'length'],
  twistMm: ['Twist', 'length'],
  allowancesMm: ['Allowances', 'length'],
  shareOfWidth: ['Share of the width, w/W'],
  shareOfLength: ['Share of the length, l/L'],
};

const STANDING: Record<Source['standing'], string> = {
  read: '',
  restated: ' As others restate it.',
  memory: ' Written down from memory: check it where much hangs on it.',
  'common-practice': ' Common practice: no publication stands behind it.',
};

const isSource = (id: string): id is WoodSourceId => id in WOOD_SOURCES;

/** A source as a sentence, with how far it can be relied on. */
export function saySource(id: WoodSourceId): string {
  const { publication, where, standing } = WOOD_SOURCES[id];
  // Geometry proves itself; only a custom of the trade needs the word.
  const isGeometry = publication === 'geometry';
  const named = standing === 'common-practice' && !isGeometry ? where : `${publication}: ${where}`;
  return `${named.charAt(0).toUpperCase()}${named.slice(1)}.${isGeometry ? '' : STANDING[standing]}`;
}

/** What a number was made of, in words: the formula, every input with its unit, and each source once. */
export function sayHow({ formula, inputs }: How, prefer: UnitSystem): SaidHow {
  const { written, says, source } = WOOD_FORMULAS[formula];
  const given = Object.entries(inputs);
  const cited = given.flatMap(([name, value]) =>
    /source$/i.test(name) && typeof value === 'string' && isSource(value) ? [value] : [],
  );
  return {
    written,
    says,
    inputs: given
      .filter(([name]) => !/source$/i.test(name))
      .map(([name, value]) => {
        const [term, unit] = INPUT_WORDS[name] ?? [name];
        return { term, value: sayValue(value, unit, prefer) };
      }),
    sources: [...new Set([source, ...cited])].map(saySource),
  };
}

function sayValue(value: number | string, unit: string | undefined, prefer: UnitSystem): string {
  if (typeof value === 'string') return value.replaceAll('-', ' ');
  if (unit === 'length') return printLength(nanometres(Math.round(value * 1e6)), { prefer, denominator: 64 });
  // Four figures are more than any input here is known to.
  const shown = String(Number(value.toPrecision(Math.abs(value) >= 1000 ? 6 : 4)));
  return unit ? `${shown} ${unit}` : shown;
}
