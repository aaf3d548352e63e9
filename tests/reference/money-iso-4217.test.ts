import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { unwrap } from '@/shared/result/result';
import { currencyDigits, readCurrency } from '@/shared/units/currency';
import { currencyChoices } from '@/shared/units/currency-choices';
import { minorUnits } from '@/shared/units/minor-units';
import { parseMoney } from '@/shared/units/parse-money';
import { printMoney } from '@/shared/units/print-money';

// ISO 4217 List One as published 2024-06-25 by the maintenance agency; the XML travels with the npm package currency-codes 2.2.0.
const xml = readFileSync(createRequire(import.meta.url).resolve('currency-codes/iso-4217-list-one.xml'), 'utf8');
const rows = [...xml.matchAll(/<CcyNtry>(.*?)<\/CcyNtry>/gs)].flatMap(([, entry = '']) => {
  const code = /<Ccy>(\w{3})</.exec(entry)?.[1];
  const digits = /<CcyMnrUnts>([^<]+)</.exec(entry)?.[1];
  return code && digits ? [{ code, digits, fund: /IsFund="true"/i.test(entry) }] : [];
});

describe('ISO 4217 List One', () => {
  it('was read whole', () => {
    expect(xml).toContain('Pblshd="2024-06-25"');
    expect(new Set(rows.map(({ code }) => code)).size).toBeGreaterThan(170);
  });

  it('every currency that can be chosen has the minor unit of the list', () => {
    const listed = new Map(rows.map(({ code, digits }) => [code, digits]));
    for (const { code, digits } of currencyChoices()) expect([code, String(digits)]).toEqual([code, listed.get(code)]);
  });

  it('every currency with a minor unit that is no fund can be chosen, and nothing else', () => {
    const money = rows.filter(({ digits, fund }) => /^\d$/.test(digits) && !fund).map(({ code }) => code);
    // An index unit of Uruguay that List One prints without its fund mark; nobody pays with it.
    const unitsOfAccount = ['UYW'];
    const expected = [...new Set(money)].filter((code) => !unitsOfAccount.includes(code)).sort();
    expect(currencyChoices().map(({ code }) => code)).toEqual(expected);
  });

  it.each([
    ['JPY', 0],
    ['KRW', 0],
    ['VND', 0],
    ['CLP', 0],
    ['ISK', 0],
    ['UGX', 0],
    ['USD', 2],
    ['EUR', 2],
    ['GBP', 2],
    ['HUF', 2],
    ['MRU', 2],
    ['MGA', 2],
    ['KWD', 3],
    ['BHD', 3],
    ['IQD', 3],
    ['TND', 3],
    ['CLF', 4],
  ])('%s has %d digits', (text, digits) => {
    const code = unwrap(readCurrency(text));
    expect(currencyDigits(code)).toBe(digits);
    const one = unwrap(parseMoney('1', code));
    expect(one).toBe(10 ** digits);
    // The platform's own digits differ for some (IQD, for one); what shows must not.
    const shown = /[\d.]+/.exec(printMoney(minorUnits(one), code).replace(/^[^\d]+/, ''))?.[0];
    expect(shown).toBe((1).toFixed(digits));
  });

  it.each(['XAU', 'XXX', 'XTS', 'CHE', 'USN', 'UYI', 'ABC', ''])('%j is no money', (text) => {
    expect(readCurrency(text)).toEqual({ ok: false, error: { code: 'unknown-currency', written: text } });
  });
});
