import type { Gs1Element } from '@/shared/scan-codes/gs1-element';

/** A measured quantity of a GS1 message, exact as printed: `decimal` is a plain decimal number as text. */
export type Gs1Measure = {
  readonly ai: string;
  readonly quantity: 'netMass' | 'grossMass' | 'length' | 'width' | 'height' | 'area' | 'netVolume' | 'grossVolume';
  /** Of the goods themselves, or of the packed unit they travel in. */
  readonly of: 'goods' | 'package';
  /** `oz` is the standard's ounce of weight or of fluid, which it leaves open; `ozt` is the troy ounce. */
  readonly unit: string;
  readonly decimal: string;
};

const QUANTITIES: Readonly<Record<string, Gs1Measure['quantity']>> = {
  'NET WEIGHT': 'netMass',
  'GROSS WEIGHT': 'grossMass',
  LENGTH: 'length',
  WIDTH: 'width',
  HEIGHT: 'height',
  AREA: 'area',
  'NET VOLUME': 'netVolume',
  VOLUME: 'grossVolume',
};

const UNITS: Readonly<Record<string, string>> = {
  l: 'L',
  'tr oz': 'ozt',
  'qt (US)': 'qt',
  'gal.': 'gal',
  'gal (US)': 'gal',
};

/** Digits with so many implied decimals, as a plain number: `impliedDecimal('000195', 3)` is `0.195`. */
function impliedDecimal(digits: string, decimals: number): string {
  const whole = digits.slice(0, digits.length - decimals).replace(/^0+(?=[0-9])/, '') || '0';
  const fraction = decimals > 0 ? digits.slice(-decimals) : '';
  return fraction === '' ? whole : `${whole}.${fraction}`;
}

/**
 * The measures among the elements (AIs 310n to 369n but 337n, mass over area), the AI's last digit being the number of
 * decimals. Source: GS1 General Specifications 3.6.2 to 3.6.4; quantity and unit are those of the data title.
 * AI 3103 with `000195` is `{ quantity: 'netMass', of: 'goods', unit: 'kg', decimal: '0.195' }`.
 */
export function gs1Measures(elements: readonly Gs1Element[]): readonly Gs1Measure[] {
  return elements.flatMap(({ ai, value, title }): Gs1Measure[] => {
    if (!/^3[1-6]..$/.test(ai)) return [];
    const parts = /^([A-Z ]+) \((.+?)\)(, log)?$/.exec(title);
    const quantity = QUANTITIES[parts?.[1] ?? ''];
    const printed = parts?.[2] ?? '';
    if (!quantity) return [];
    const ofPackage = parts?.[3] !== undefined || quantity === 'grossMass';
    return [
      {
        ai,
        quantity,
        of: ofPackage ? 'package' : 'goods',
        unit: UNITS[printed] ?? printed,
        decimal: impliedDecimal(value, Number(ai.charAt(3))),
      },
    ];
  });
}
