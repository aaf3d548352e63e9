import { describe, expect, it } from 'vitest';
import { AI_DICTIONARY } from '@/shared/scan-codes/ai-dictionary';
import { checkAiValue } from '@/shared/scan-codes/check-ai-value';

/** The code of the first fault, with its index; `ok` where there is none. */
function verdict(ai: string, value: string): string {
  const entry = AI_DICTIONARY.get(ai);
  if (!entry) throw new Error(`AI ${ai} is not in the dictionary`);
  const fault = checkAiValue(entry, value);
  return fault ? `${fault.code} ${fault.at}` : 'ok';
}

// Source of every row: GS1 Barcode Syntax Dictionary, unit tests of the linter named, as carried by the GS1 Barcode
// Syntax Engine 50657db; the linter is exercised through an AI that uses it.
describe('GS1 linters', () => {
  it.each([
    ['1987654Ad4X4bL5ttr2310c2K', 'ok'],
    ['1987654Ad4X4bL5ttr2310cXK', 'check-characters 23'],
    ['1987654Ad4X4bL5ttr2310c2X', 'check-characters 23'],
    ['12345678901234567890123NT', 'ok'],
    ['12345_ABCDEFGHIJKLMCP', 'ok'],
    ['12345_NOPQRSTUVWXYZDN', 'ok'],
    ['12345_abcdefghijklmN3', 'ok'],
    ['12345_nopqrstuvwxyzP2', 'ok'],
    ['12345_!"%&\'()*+,-./LC', 'ok'],
    ['12345_0123456789:;<=>?62', 'ok'],
    ['7907665Bm8v2AB', 'ok'],
    ['97850l6KZm0yCD', 'ok'],
    ['225803106GSpEF', 'ok'],
    ['149512464PM+GH', 'ok'],
    ['62577B8fRG7HJK', 'ok'],
    ['515942070CYxLM', 'ok'],
    ['390800494sP6NP', 'ok'],
    ['386830132uO+QR', 'ok'],
    ['53395376X1:nST', 'ok'],
    ['957813138Sb6UV', 'ok'],
    ['530790no0qOgWX', 'ok'],
    ['62185314IvwmYZ', 'ok'],
    ['23956qk1&dB!23', 'ok'],
    ['794394895ic045', 'ok'],
    ['57453Uq3qA<H67', 'ok'],
    ['0881063PhHvY89', 'ok'],
    ['00000!HV', 'ok'],
    ['99999zzzzzzzzzzzzzzzzzzT2', 'ok'],
  ])('csumalpha, AI 8013: %s is %s', (value, expected) => {
    expect(verdict('8013', value)).toBe(expected);
  });

  it.each([
    ['FR7630006000011234567890189', 'ok'],
    ['DE91100000000123456789', 'ok'],
    ['GR9608100010000001234567890', 'ok'],
    ['MU43BOMM0101123456789101000MUR', 'ok'],
    ['PK70BANK0000123456789000', 'ok'],
    ['PL10105000997603123456789123', 'ok'],
    ['RO09BCYP0000001234567890', 'ok'],
    ['SA4420000001234567891234', 'ok'],
    ['ES7921000813610123456789', 'ok'],
    ['CH5604835012345678009', 'ok'],
    ['GB98MIDL07009312345678', 'ok'],
    ['BE71096123456769', 'ok'],
    ['BE71096123456760', 'check-digit 2'],
    ['LC14BOSL123456789012345678901234', 'ok'],
    ['LC14BOSL123456789012345678901230', 'check-digit 2'],
    ['MT90MALT011000012345MTLCAST001SABC', 'ok'],
    ['MT90MALT011000012345MTLCAST001SAB0', 'check-digit 2'],
    ['BE71', 'too-short 0'],
    ['LC14BOSLxx3456789012345678901230', 'invalid-character 8'],
    ['XX361234567890', 'unknown-country 0'],
  ])('iban, AI 8007: %s is %s', (value, expected) => {
    expect(verdict('8007', value)).toBe(expected);
  });

  it.each([
    ['001234561234560123456', 'ok'],
    ['101234561234560123456', 'ok'],
    ['201234561234560123456', 'bad-coupon-field 0'],
    ['07', 'bad-coupon-field 1'],
    ['00123456', 'coupon-too-short 8'],
    ['001234561234560', 'coupon-too-short 15'],
    ['0012345612345611234567', 'ok'],
    ['001234561234569123456789012345', 'ok'],
    ['0012345612345601234567', 'excess-data 21'],
    ['061234567890121234569123456789012345', 'ok'],
    ['a01234561234560123456', 'invalid-character 0'],
  ])('couponposoffer, AI 8112: %s is %s', (value, expected) => {
    expect(verdict('8112', value)).toBe(expected);
  });

  it.each([
    ['012345612345611110123', 'ok'],
    ['0123456123456111101237', 'excess-data 21'],
    ['01234561234561111012314', 'bad-coupon-field 22'],
    ['012345612345611110123100', 'bad-coupon-field 23'],
    ['012345612345611110123101101230123456', 'ok'],
    ['0123456123456111101231011012311234567', 'ok'],
    ['012345612345611110123101101236123456789012', 'ok'],
    ['01234561234561111012310110123812345678901234', 'bad-coupon-field 29'],
    ['012345612345611110123101101239', 'ok'],
    ['0123456123456111101231011012391', 'excess-data 30'],
    ['01234561234561111012320', 'bad-coupon-field 22'],
    ['0123456123456111101232115', 'bad-coupon-field 24'],
    ['01234561234561111012321101230123456', 'ok'],
  ])('couponcode, AI 8110: %s is %s', (value, expected) => {
    expect(verdict('8110', value)).toBe(expected);
  });

  it.each([
    ['4309', '18000000003600000000', 'ok'],
    ['4309', '18000000013600000000', 'bad-latitude 0'],
    ['4309', '18000000003600000001', 'bad-longitude 10'],
    ['4307', 'US', 'ok'],
    ['4307', 'XX', 'unknown-country 0'],
    ['422', '999', 'unknown-country 0'],
    ['7030', '999ABC', 'ok'],
    ['7030', '998ABC', 'unknown-country 0'],
    ['3932', '9781234', 'ok'],
    ['3932', '0001234', 'unknown-currency 0'],
    ['4324', '2612312400', 'bad-hour 6'],
    ['4324', '2612312360', 'bad-minute 8'],
    ['8008', '2612312359', 'ok'],
    ['8008', '26123124', 'bad-hour 6'],
    ['8008', '261231236059', 'bad-minute 8'],
    ['8008', '261231235960', 'bad-second 10'],
    ['8006', '952012345678810112', 'check-digit 13'],
    ['8006', '095201234567880000', 'bad-piece 14'],
    ['8006', '095201234567880100', 'bad-total 16'],
    ['8006', '095201234567880201', 'piece-exceeds-total 14'],
    ['7258', '2/1', 'position-exceeds-end 0'],
    ['7258', '0/1', 'not-position-of-end 0'],
    ['7258', '1/2', 'ok'],
    ['4300', 'A%2fB', 'ok'],
    ['4300', 'A%2gB', 'bad-percent-escape 1'],
    ['4321', '2', 'not-yes-or-no 0'],
    ['4331', '001234+', 'not-a-hyphen 6'],
    ['7040', '1AB*', 'bad-importer-index 3'],
    ['7241', '11', 'unknown-media-type 0'],
    ['7041', 'ZZZ', 'unknown-package-type 0'],
    ['7252', '3', 'unknown-sex-code 0'],
    ['8001', '00001234512311', 'is-zero 0'],
    ['8001', '12341234512321', 'bad-winding 12'],
    ['8003', '11234567890128', 'not-zero 0'],
    ['8011', '0123', 'zero-in-front 0'],
    ['8030', 'AQI=', 'ok'],
    ['8030', 'AQ=', 'bad-base64-padding 2'],
    ['8014', '225803106GSpEF', 'ok'],
    ['10', 'LOT 12', 'invalid-character 3'],
    ['10', 'A'.repeat(20), 'ok'],
    ['10', 'A'.repeat(21), 'too-long 20'],
    ['423', '036276', 'ok'],
    ['423', '0362', 'too-short 4'],
  ])('AI %s: %s is %s', (ai, value, expected) => {
    expect(verdict(ai, value)).toBe(expected);
  });
});
