/** Regions where workshops measure in inches (Unicode CLDR 48, supplemental measurementData, system "US"; from memory). */
const INCHES = ['US', 'LR', 'MM'];

const EURO = 'AD AT BE BG CY DE EE ES FI FR GR HR IE IT LT LU LV MC ME MT NL PT SI SK SM VA XK'.split(' ');

/** The currency of a region, ISO 3166-1 to ISO 4217, for the regions a workshop is most likely in. */
const CURRENCIES: Readonly<Record<string, string>> = {
  ...Object.fromEntries(EURO.map((region) => [region, 'EUR'])),
  ...Object.fromEntries('US EC SV PR GU LR PA'.split(' ').map((region) => [region, 'USD'])),
  AE: 'AED',
  AR: 'ARS',
  AU: 'AUD',
  BA: 'BAM',
  BR: 'BRL',
  CA: 'CAD',
  CH: 'CHF',
  CL: 'CLP',
  CN: 'CNY',
  CO: 'COP',
  CR: 'CRC',
  CZ: 'CZK',
  DK: 'DKK',
  EG: 'EGP',
  GB: 'GBP',
  GE: 'GEL',
  GT: 'GTQ',
  HK: 'HKD',
  HU: 'HUF',
  ID: 'IDR',
  IL: 'ILS',
  IN: 'INR',
  IS: 'ISK',
  JP: 'JPY',
  KE: 'KES',
  KR: 'KRW',
  LI: 'CHF',
  MA: 'MAD',
  MD: 'MDL',
  MK: 'MKD',
  MX: 'MXN',
  MY: 'MYR',
  NG: 'NGN',
  NO: 'NOK',
  NZ: 'NZD',
  PE: 'PEN',
  PH: 'PHP',
  PK: 'PKR',
  PL: 'PLN',
  PY: 'PYG',
  RO: 'RON',
  RS: 'RSD',
  SA: 'SAR',
  SE: 'SEK',
  SG: 'SGD',
  TH: 'THB',
  TN: 'TND',
  TR: 'TRY',
  TW: 'TWD',
  UA: 'UAH',
  UY: 'UYU',
  VN: 'VND',
  ZA: 'ZAR',
};

export type SetUpGuess = { units: 'metric' | 'imperial'; currency: string };

/**
 * What a visitor's browser suggests for a new book, from its `Accept-Language` (RFC 9110, 12.5.4): the first language with
 * a region, or the likeliest region of the first language. `en-GB,en;q=0.8` is metric and GBP; nothing readable is metric
 * and EUR. Only a suggestion: the form shows both to be changed.
 */
export function guessSetUp(acceptLanguage: string | null): SetUpGuess {
  const languages = (acceptLanguage ?? '').split(',').flatMap((part) => localeOf(part.split(';')[0]?.trim() ?? ''));
  const region = languages.find((locale) => locale.region)?.region ?? languages[0]?.maximize().region ?? '';
  return { units: INCHES.includes(region) ? 'imperial' : 'metric', currency: CURRENCIES[region] ?? 'EUR' };
}

function localeOf(tag: string): Intl.Locale[] {
  try {
    return tag && tag !== '*' ? [new Intl.Locale(tag)] : [];
  } catch {
    return [];
  }
}
