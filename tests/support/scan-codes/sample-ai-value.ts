import type { AiComponent, AiEntry } from '@/shared/scan-codes/ai-entry';
import { gtinCheckDigit } from '@/shared/scan-codes/gtin-check-digit';
import { pick } from '@/tests/support/scan-codes/seeded-random';

const CHARACTERS = {
  N: '0123456789',
  X: '!"%&\'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz',
  Y: '#-/0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ',
  Z: 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_',
};

/** Published values that pass the checks whose passing values are hard to make up. Source: GS1 Barcode Syntax Engine
 * `50657db`, unit tests of the linters of these names. */
const PUBLISHED: Readonly<Record<string, readonly string[]>> = {
  csumalpha: ['1987654Ad4X4bL5ttr2310c2K', '12345678901234567890123NT', '12345_ABCDEFGHIJKLMCP', '7907665Bm8v2AB'],
  iban: ['FR7630006000011234567890189', 'DE91100000000123456789', 'GB98MIDL07009312345678', 'BE71096123456769'],
  couponcode: ['012345612345611110123', '012345612345611110123101101239', '01234561234561111012321101230123456'],
  couponposoffer: ['001234561234560123456', '0012345612345611234567', '061234567890121234569123456789012345'],
  iso3166: ['036', '276', '840'],
  iso3166999: ['036', '276', '999'],
  iso3166alpha2: ['AU', 'DE', 'US'],
  iso4217: ['978', '840', '036'],
  iso5218: ['0', '1', '2', '9'],
  packagetype: ['1A', '7B', 'PX', 'X20'],
  mediatype: ['01', '10', '80', '99'],
  winding: ['0', '1', '9'],
  yesno: ['0', '1'],
  hyphen: ['-'],
  zero: ['0'],
  latitude: ['0000000000', '0900000000', '1800000000'],
  longitude: ['0000000000', '1800000000', '3600000000'],
  posinseqslash: ['1/1', '2/3', '3/9'],
  pieceoftotal: ['0101', '0102', '9999'],
  yymmdd: ['260131', '991231', '200229'],
  yymmd0: ['260131', '991231', '200229', '270200'],
  yyyymmdd: ['19700101', '20240229', '20261231'],
  hh: ['00', '23'],
  mi: ['00', '59'],
  ss: ['00', '59'],
  hhmi: ['0000', '2359'],
};

function sampleComponent(component: AiComponent, random: () => number): string {
  for (const check of component.checks) {
    const published = PUBLISHED[check];
    if (published) return pick(random, published);
  }
  const length = component.shortest + Math.floor(random() * (component.longest - component.shortest + 1));
  let text = Array.from({ length }, () => pick(random, CHARACTERS[component.type])).join('');
  if (component.checks.includes('pcenc')) text = text.replaceAll('%', '%41').slice(0, component.longest);
  if (component.checks.includes('pcenc')) text = text.replace(/%[0-9A-Fa-f]?$/, '') || 'A';
  if (component.checks.includes('gcppos1')) text = text.length < 2 ? '95' : `95${text.slice(2)}`;
  if (component.checks.includes('csum')) text = text.slice(0, -1) + gtinCheckDigit(text.slice(0, -1));
  if (component.checks.includes('nonzero')) text = `${text.slice(0, -1)}7`;
  if (component.checks.includes('nozeroprefix')) text = `4${text.slice(1)}`;
  if (component.checks.includes('importeridx')) text = pick(random, '-_09AZaz');
  return text;
}

/** A value that an AI's entry in the dictionary allows. */
export function sampleAiValue(entry: AiEntry, random: () => number): string {
  let value = '';
  for (const component of entry.components) {
    if (component.optional && random() < 0.5) break;
    value += sampleComponent(component, random);
  }
  return value;
}
