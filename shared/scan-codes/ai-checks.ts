import { COUNTRY_LETTERS, COUNTRY_NUMBERS, CURRENCY_NUMBERS, PACKAGE_TYPES } from '@/shared/scan-codes/ai-code-lists';
import type { AiFault, AiFaultCode } from '@/shared/scan-codes/ai-fault';
import { checkCoupon, checkPositiveOfferCoupon } from '@/shared/scan-codes/check-coupon';
import { checkModelNumber } from '@/shared/scan-codes/check-model-number';
import { checkMonthDay } from '@/shared/scan-codes/check-month-day';
import { gtinCheckDigit } from '@/shared/scan-codes/gtin-check-digit';
import { mod97 } from '@/shared/scan-codes/iso-7064-mod-97-10';

/** A check of content whose characters and length have already been checked. Undefined means nothing is wrong. */
type AiCheck = (value: string) => AiFault | undefined;

const fault = (code: AiFaultCode, at = 0): AiFault => ({ code, at });

/** A check of the whole value by one test. */
const unless =
  (test: (value: string) => boolean, code: AiFaultCode): AiCheck =>
  (value) =>
    test(value) ? undefined : fault(code);

/** Two digits at an index, no more than a limit. */
const upTo =
  (at: number, limit: number, code: AiFaultCode): AiCheck =>
  (value) =>
    Number(value.slice(at, at + 2)) > limit ? fault(code, at) : undefined;

const hour = upTo(0, 23, 'bad-hour');
const minuteAfterHour = upTo(2, 59, 'bad-minute');

/**
 * A year for YY that decides only whether 29 February exists. Every YY from 1901 to 2099 with the same two digits
 * agrees; the reading itself is dated by the century rule.
 */
const leapYearOf = (value: string): number => 2000 + Number(value.slice(0, 2));

function shortDate(wholeMonth: boolean): AiCheck {
  return (value) => {
    const found = checkMonthDay(leapYearOf(value), value.slice(2), wholeMonth);
    return found && { code: found.code, at: found.at + 2 };
  };
}

function longDate(value: string): AiFault | undefined {
  const found = checkMonthDay(Number(value.slice(0, 4)), value.slice(4), false);
  return found && { code: found.code, at: found.at + 4 };
}

function checkDigit(value: string): AiFault | undefined {
  const at = value.length - 1;
  const expected = String(gtinCheckDigit(value.slice(0, at)));
  return value.charAt(at) === expected ? undefined : { code: 'check-digit', at, expected };
}

/** Company prefixes are digits; the shortest two are looked at, as no register of prefixes is at hand. */
function companyPrefixAt(start: number): AiCheck {
  return (value) => {
    if (value.length < start + 2) return fault('no-company-prefix', 0);
    const stray = value.slice(start, start + 2).search(/[^0-9]/);
    return stray < 0 ? undefined : fault('no-company-prefix', start + stray);
  };
}

function pieceOfTotal(value: string): AiFault | undefined {
  const piece = Number(value.slice(0, 2));
  const total = Number(value.slice(2));
  if (piece === 0) return fault('bad-piece', 0);
  if (total === 0) return fault('bad-total', 2);
  return piece > total ? fault('piece-exceeds-total', 0) : undefined;
}

function positionInSequence(value: string): AiFault | undefined {
  const parts = /^([1-9][0-9]*)\/([1-9][0-9]*)$/.exec(value);
  if (!parts) return fault('not-position-of-end');
  return Number(parts[1]) > Number(parts[2]) ? fault('position-exceeds-end') : undefined;
}

function percentEncoding(value: string): AiFault | undefined {
  const at = value.search(/%(?![0-9A-Fa-f]{2})/);
  return at < 0 ? undefined : fault('bad-percent-escape', at);
}

function bankAccount(value: string): AiFault | undefined {
  const stray = value.search(/[^0-9A-Z]/);
  if (stray >= 0) return fault('invalid-character', stray);
  if (value.length <= 4) return fault('too-short');
  if (!COUNTRY_LETTERS.has(value.slice(0, 2))) return fault('unknown-country');
  return mod97(value.slice(4) + value.slice(0, 4)) === 1 ? undefined : fault('check-digit', 2);
}

/**
 * The content checks the dictionary names, by that name. Indexes count from the component's first character.
 *
 * Source: GS1 Barcode Syntax Dictionary, reference tests ("linters") of the same names; ISO 3166-1, ISO 4217, ISO
 * 5218, ISO 13616 and UN/CEFACT Recommendation 21 for the coded ones.
 */
export const AI_CHECKS: Readonly<Record<string, AiCheck>> = {
  csum: checkDigit,
  csumalpha: checkModelNumber,
  gcppos1: companyPrefixAt(0),
  gcppos2: companyPrefixAt(1),
  yymmdd: shortDate(false),
  yymmd0: shortDate(true),
  yyyymmdd: longDate,
  hh: hour,
  mi: upTo(0, 59, 'bad-minute'),
  ss: upTo(0, 59, 'bad-second'),
  hhmi: (value) => hour(value) ?? minuteAfterHour(value),
  iso3166: unless((value) => COUNTRY_NUMBERS.has(value), 'unknown-country'),
  iso3166999: unless((value) => value === '999' || COUNTRY_NUMBERS.has(value), 'unknown-country'),
  iso3166alpha2: unless((value) => COUNTRY_LETTERS.has(value), 'unknown-country'),
  iso4217: unless((value) => CURRENCY_NUMBERS.has(value), 'unknown-currency'),
  iso5218: unless((value) => /^[0129]$/.test(value), 'unknown-sex-code'),
  iban: bankAccount,
  packagetype: unless((value) => PACKAGE_TYPES.has(value), 'unknown-package-type'),
  mediatype: unless((value) => /^(0[1-9]|10|[89][0-9])$/.test(value), 'unknown-media-type'),
  pieceoftotal: pieceOfTotal,
  posinseqslash: positionInSequence,
  pcenc: percentEncoding,
  importeridx: unless((value) => /^[-0-9A-Z_a-z]$/.test(value), 'bad-importer-index'),
  winding: unless((value) => /^[019]$/.test(value), 'bad-winding'),
  yesno: unless((value) => /^[01]$/.test(value), 'not-yes-or-no'),
  hyphen: unless((value) => value === '-', 'not-a-hyphen'),
  zero: unless((value) => value === '0', 'not-zero'),
  nonzero: unless((value) => /[^0]/.test(value), 'is-zero'),
  nozeroprefix: unless((value) => value.length === 1 || !value.startsWith('0'), 'zero-in-front'),
  hasnondigit: unless((value) => /[^0-9]/.test(value), 'digits-only'),
  latitude: unless((value) => Number(value) <= 1_800_000_000, 'bad-latitude'),
  longitude: unless((value) => Number(value) <= 3_600_000_000, 'bad-longitude'),
  couponcode: checkCoupon,
  couponposoffer: checkPositiveOfferCoupon,
};
